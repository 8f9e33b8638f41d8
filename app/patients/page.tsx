import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { Finder } from "#app/patients/finder.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";

export const metadata: Metadata = { title: "Patients - Dwellbook" };

/** Find a patient, or record one who is not here yet. */
export default async function PatientsPage(): Promise<ReactNode> {
  const { frame, person } = await signedIn();
  return (
    <PageFrame frame={frame} heading="Which patient?" here="Patients">
      <Finder />
      {may(person, "patient.register") && (
        <p data-screen-only>
          Not found? <a href="/patients/new">Record a patient</a>
        </p>
      )}
    </PageFrame>
  );
}
