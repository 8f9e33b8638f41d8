"use client";

import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { Recorded } from "#app/record/recorded.tsx";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import { joinForm } from "#shared/record/patient/join-form.ts";
import { actLabels } from "#shared/words/acts.ts";

export type JoinRecordFormProps = {
  readonly patientId: string;
  readonly otherId: string;
  readonly draft: StoredDraft | null;
  /** Whether both are records of their own as the page opens; what was saved stays in sight after. */
  readonly joinable: boolean;
};

/** Join the other record into this one, with how it was found that both are one person's. */
export function JoinRecordForm({ patientId, otherId, draft, joinable }: JoinRecordFormProps): ReactNode {
  const [offered] = useState(joinable);
  if (!offered) return null;
  return (
    <RecordingForm
      fields={joinForm.fields()}
      act={actLabels["records joined"]}
      lastSeen={0}
      draft={draft}
      drafts={draftStore("record.joined", otherId)}
      send={(texts, { actId }) => api.record.joined.mutate({ actId, patientId, otherId, texts })}
      leaveTo={`/patients/${patientId}`}
      saved={({ actId }) => (
        <Recorded said="The two records are joined." actId={actId}>
          <a href={`/patients/${patientId}`}>To the patient</a>
        </Recorded>
      )}
    />
  );
}
