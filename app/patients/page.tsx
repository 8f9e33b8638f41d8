import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import type { Query } from "#app/lists/filter-address.ts";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { isDay } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { ROOM_NAME_LIMIT } from "#shared/visit/room.ts";

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

type PatientsPageProps = { readonly searchParams: Promise<Query> };

/** A free time that was chosen among the visits before anybody was named: "Wed 11 Nov 2026, 10:00, Room 1". */
function slotIn({ on, at, room }: Query): string | null {
  if (typeof on !== "string" || typeof at !== "string" || typeof room !== "string") return null;
  if (!isDay(on) || !/^\d\d:\d\d$/.test(at) || room.length > ROOM_NAME_LIMIT) return null;
  return `${printDay(on)}, ${at}, ${room}`;
}

/** How to find a patient, or record one who is not here yet. The finder itself stands in the head of every page. */
export default async function PatientsPage({ searchParams }: PatientsPageProps): Promise<ReactNode> {
  const { frame, person } = await signedIn();
  const slot = slotIn(await searchParams);
  return (
    <PageFrame
      frame={frame}
      heading={slot === null ? "Which patient?" : "Whose visit is it?"}
      here="Patients"
    >
      {slot !== null && (
        <p>
          Free: {slot}. Find the patient with the field above, and book the visit from there: it is checked
          against this time again.
        </p>
      )}
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
