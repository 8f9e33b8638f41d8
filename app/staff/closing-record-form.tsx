"use client";

import type { ReactNode } from "react";
import { api } from "#app/_trpc/client.ts";
import { NoticeLine } from "#app/ui/notice-line.tsx";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import { type ClosingContext, closingForm } from "#shared/record/staff/closing-form.ts";

export type ClosingRecordFormProps = { readonly context: ClosingContext; readonly draft: StoredDraft | null };

/** Close an account: every step that was this person's by name passes on first. */
export function ClosingRecordForm({ context, draft }: ClosingRecordFormProps): ReactNode {
  const { closes } = context;
  return (
    <RecordingForm
      fields={closingForm.fields(context)}
      act="Close the account"
      lastSeen={0}
      draft={draft}
      drafts={draftStore("staff.close", closes)}
      send={(texts, { actId }) => api.staff.close.mutate({ actId, closes, texts })}
      leaveTo="/staff"
      saved={({ passed }) => (
        <NoticeLine>
          <span>
            The account is closed.{" "}
            {passed === 0
              ? "No step was theirs by name."
              : `${passed} open ${passed === 1 ? "step" : "steps"} passed on.`}
          </span>
          <a href="/staff">To the staff</a>
        </NoticeLine>
      )}
    />
  );
}
