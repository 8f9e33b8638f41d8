import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";

export const metadata: Metadata = { title: "Patients - Dwellbook" };

const waysToFind = [
  { by: "Name", like: "ottoline brack", note: "any part, in any order, with or without accents" },
  { by: "Record number", like: "000417", note: "with or without its leading zeros" },
  { by: "Birth date", like: "3 apr 1951, 3/4/1951", note: "alone or beside a name, with its year" },
  {
    by: "Telephone",
    like: "01632 960117",
    note: "all of it or its last digits; also the alternate contact's",
  },
] as const;

/** How to find a patient, or record one who is not here yet. The finder itself stands in the head of every page. */
export default async function PatientsPage(): Promise<ReactNode> {
  const { frame, person } = await signedIn();
  return (
    <PageFrame frame={frame} heading="Which patient?" here="Patients">
      <DataTable
        caption="What the finder above takes"
        columns={[
          { head: "Find by", cell: ({ by }) => by },
          { head: "Type", cell: ({ like }) => like },
          { head: "How", cell: ({ note }) => note },
        ]}
        rows={waysToFind}
        keyOf={({ by }) => by}
        none=""
      />
      {may(person, "patient.register") && (
        <p data-screen-only>
          Not found? <a href="/patients/new">Record a patient</a>
        </p>
      )}
    </PageFrame>
  );
}
