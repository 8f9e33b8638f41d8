"use client";

import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { openedWith } from "#app/record/opened-with.ts";
import { NoticeLine } from "#app/ui/notice-line.tsx";
import { newActId } from "#app/ui/recording/act-id.ts";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import type { Act } from "#app/ui/recording/use-recording.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import { UndoNotice } from "#app/ui/undo-notice.tsx";
import type { Texts } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";
import { patientForm } from "#shared/record/patient/patient-form.ts";

export type PatientRecordFormProps = {
  readonly context: FormContext;
  readonly draft: StoredDraft | null;
  /** What stands of a patient who is corrected, and when the page saw it change last; null for a new one. */
  readonly corrects: {
    readonly patientId: string;
    readonly texts: Texts;
    readonly lastUpdatedAt: number;
  } | null;
};

/** Record a patient, or correct who a patient is and how they are reached. */
export function PatientRecordForm({ context, draft, corrects }: PatientRecordFormProps): ReactNode {
  const fields = patientForm.fields(context);
  const send = (texts: Texts, { actId }: Act) => {
    if (corrects === null) return api.patient.register.mutate({ actId, texts });
    const { patientId, lastUpdatedAt } = corrects;
    return api.patient.correct.mutate({ actId, texts, patientId, lastUpdatedAt });
  };
  return (
    <RecordingForm
      fields={corrects === null ? fields : openedWith(fields, corrects.texts)}
      check={(values) => patientForm.check?.(values, context) ?? []}
      act={corrects === null ? "Record the patient" : "Correct the record"}
      lastSeen={0}
      draft={draft}
      drafts={draftStore(
        corrects === null ? "patient.register" : "patient.correct",
        corrects?.patientId ?? "",
      )}
      send={send}
      leaveTo={corrects === null ? "/patients" : `/patients/${corrects.patientId}`}
      saved={(done) => (corrects === null ? <Registered {...done} /> : <Corrected {...done} />)}
    />
  );
}

type Done = { readonly patientId: string; readonly actId: string };

/** What was registered can be taken back as long as nothing else was recorded under it. */
function Registered({ patientId, actId: undoes }: Done): ReactNode {
  const [actId] = useState(newActId);
  return (
    <UndoNotice said="The patient is recorded." undo={() => api.record.undone.mutate({ actId, undoes })}>
      <a href={`/patients/${patientId}/record/placed`}>Record a tube</a>
      <a href={`/patients/${patientId}`}>To the patient</a>
    </UndoNotice>
  );
}

function Corrected({ patientId }: Done): ReactNode {
  return (
    <NoticeLine>
      <span>The record is corrected; what stood is kept.</span>
      <a href={`/patients/${patientId}`}>To the patient</a>
    </NoticeLine>
  );
}
