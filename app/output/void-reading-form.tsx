"use client";

import type { ReactNode } from "react";
import { api } from "#app/_trpc/client.ts";
import { Recorded } from "#app/record/recorded.tsx";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import { voidForm } from "#shared/record/amend/void-form.ts";

export type VoidReadingFormProps = {
  readonly patientId: string;
  readonly tubeId: string;
  readonly readingId: string;
  readonly lastSeen: number;
  readonly draft: StoredDraft | null;
};

/** Take one reading out of what counts, with a reason. */
export function VoidReadingForm({
  patientId,
  tubeId,
  readingId,
  lastSeen,
  draft,
}: VoidReadingFormProps): ReactNode {
  const leaveTo = `/tubes/${tubeId}/output`;
  return (
    <RecordingForm
      fields={voidForm.fields()}
      act="Void the reading"
      lastSeen={lastSeen}
      draft={draft}
      drafts={draftStore("reading.voided", readingId)}
      send={(texts, act) => api.reading.voided.mutate({ ...act, texts, patientId, readingId })}
      leaveTo={leaveTo}
      saved={({ actId }) => (
        <Recorded said="The reading is voided." actId={actId}>
          <a href={leaveTo}>To the output</a>
        </Recorded>
      )}
    />
  );
}
