"use client";

import type { ReactNode } from "react";
import { api } from "#app/_trpc/client.ts";
import { Recorded } from "#app/record/recorded.tsx";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import { voidForm } from "#shared/record/amend/void-form.ts";

export type VoidFormProps = {
  readonly patientId: string;
  readonly eventId: string;
  readonly lastSeen: number;
  readonly draft: StoredDraft | null;
  readonly leaveTo: string;
};

/** Take one entry out of what counts, with a reason. */
export function VoidForm({ patientId, eventId, lastSeen, draft, leaveTo }: VoidFormProps): ReactNode {
  return (
    <RecordingForm
      fields={voidForm.fields()}
      act="Void the entry"
      lastSeen={lastSeen}
      draft={draft}
      drafts={draftStore("record.voided", eventId)}
      send={(texts, act) => api.record.voided.mutate({ ...act, texts, patientId, eventId })}
      leaveTo={leaveTo}
      saved={({ actId }) => (
        <Recorded said="The entry is voided." actId={actId}>
          <a href={leaveTo}>To the patient</a>
        </Recorded>
      )}
    />
  );
}
