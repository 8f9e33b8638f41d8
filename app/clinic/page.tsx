import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { FactList } from "#app/facts/fact-list.tsx";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { printInstant } from "#shared/day/print-day.ts";

export const metadata: Metadata = { title: "Clinic - Dwellbook" };

const numberWords = (phone: string): string => (phone === "" ? "none" : phone);

/** What the clinic's papers say of the clinic, and who changed it. */
export default async function ClinicPage(): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  if (!may(person, "clinic.view"))
    return (
      <PageFrame here="Clinic's books" frame={frame} heading="What do papers say of the clinic?">
        <NotForYou back="/" />
      </PageFrame>
    );
  const { name, zone, phone, changes } = await api.clinic.view();
  return (
    <PageFrame here="Clinic's books" frame={frame} heading="What do papers say of the clinic?">
      <FactList
        rows={[
          { word: "Name", says: name },
          { word: "Telephone that patients ring", says: phone === "" ? null : phone },
          { word: "Time zone", says: zone },
        ]}
      />
      <p data-screen-only>
        <a href="/clinic/telephone">Set the telephone</a>
      </p>
      <DataTable
        caption="Changes of the telephone, the newest first"
        columns={[
          { head: "When", cell: ({ at }) => printInstant(at, zone) },
          { head: "Who", cell: ({ who }) => <bdi>{who}</bdi> },
          { head: "From", cell: ({ before }) => numberWords(before.phone) },
          { head: "To", cell: ({ after }) => numberWords(after.phone) },
        ]}
        rows={changes}
        keyOf={({ id }) => id}
        none="Nobody has changed it since the clinic was opened."
      />
    </PageFrame>
  );
}
