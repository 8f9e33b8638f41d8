import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { PatientRecordForm } from "#app/patients/patient-record-form.tsx";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";

export const metadata: Metadata = { title: "Record a patient - Dwellbook" };

/** A new patient. The number is looked up when it is saved, so that nobody stands here twice. */
export default async function NewPatientPage(): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  return (
    <PageFrame frame={frame} heading="Who is the patient?" here="Patients">
      {may(person, "patient.register") ? (
        <PatientRecordForm
          context={{
            ...(await api.record.beside()),
            tube: null,
            tubes: [],
            opens: { tubeId: "", number: 0 },
          }}
          draft={await api.draft.load({ form: "patient.register", subject: "" })}
          corrects={null}
        />
      ) : (
        <NotForYou back="/patients" />
      )}
    </PageFrame>
  );
}
