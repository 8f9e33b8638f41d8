import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { identityOf } from "#app/patients/identity-of.ts";
import { PatientRecordForm } from "#app/patients/patient-record-form.tsx";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import type { Contact } from "#shared/record/patient/patient-details.ts";
import { patientTexts } from "#shared/record/patient/patient-texts.ts";

export const metadata: Metadata = { title: "Correct identity - Dwellbook" };

type IdentityPageProps = { readonly params: Promise<{ readonly id: string }> };

/** Who the patient is and how they are reached, open to be corrected. */
export default async function IdentityPage({ params }: IdentityPageProps): Promise<ReactNode> {
  const { id: patientId } = await params;
  const { api, frame, person } = await signedIn();
  const { patient } = await orNotFound(api.patient.view({ patientId }));
  return (
    <PageFrame
      frame={frame}
      heading="Who is the patient, and how are they reached?"
      here="Patients"
      identity={identityOf(patient, null)}
    >
      {may(person, "patient.correct") ? (
        <PatientRecordForm
          context={{
            ...(await api.record.beside()),
            tube: null,
            tubes: [],
            opens: { tubeId: "", number: 0 },
          }}
          draft={await api.draft.load({ form: "patient.correct", subject: patientId })}
          corrects={{
            patientId,
            texts: patientTexts({ ...patient, contact: patient.contact as Contact }),
            lastUpdatedAt: patient.updatedAt,
          }}
        />
      ) : (
        <NotForYou back={`/patients/${patientId}`} />
      )}
    </PageFrame>
  );
}
