import { api } from "#app/_trpc/client.ts";
import type { DraftStore } from "#app/ui/recording/use-draft.ts";

/** The drafts of one form about one patient or tube; `subject` is its id, "" for a form that opens a new one. */
export const draftStore = (form: string, subject: string): DraftStore => ({
  save: (content) => api.draft.save.mutate({ form, subject, content }),
  drop: () => api.draft.drop.mutate({ form, subject }),
});
