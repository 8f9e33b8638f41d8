import type { Sent } from "#app/ui/recording/send-act.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

/** What an act that was not saved says: every refusal, or what to do where no answer came. */
export const unsavedSentence = (
  sent: Exclude<Sent<unknown>, { readonly kind: "saved" }>,
  unanswered: string,
): string => (sent.kind === "refused" ? sent.refusals.map(refusalSentence).join(" ") : unanswered);
