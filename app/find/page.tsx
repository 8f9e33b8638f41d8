import type { Metadata } from "next";
import type { ReactNode } from "react";
import { type SignedIn, signedIn } from "#app/_trpc/server.ts";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { printBirth } from "#shared/day/print-day.ts";
import { finderDraft } from "#shared/record/finder.ts";

export const metadata: Metadata = { title: "Find a patient - Dwellbook" };

/** As many as a search answers; beyond it, more may be meant. */
const MOST = 20;

/** Whom the finder of the running head found, by what this person typed last. */
export default async function FindPage(): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  const typed = (await api.draft.load(finderDraft))?.texts.typed ?? "";
  const patients = await api.patient.find({ typed });
  return (
    <PageFrame frame={frame} heading="Which patient is meant?" lede={<bdi>{typed}</bdi>}>
      <DataTable
        caption="Patients"
        columns={[
          { head: "Name", cell: (patient) => <a href={`/patients/${patient.id}`}>{nameOf(patient)}</a> },
          { head: "Number", cell: ({ number }) => <bdi>{number}</bdi> },
          { head: "Born", cell: ({ birthOn }) => (birthOn === null ? "unknown" : printBirth(birthOn)) },
        ]}
        rows={patients}
        keyOf={({ id }) => id}
        none={noneWords(typed)}
      />
      {patients.length === MOST && <p>More may be meant: type more of the name, or the number.</p>}
      {may(person, "patient.register") && (
        <p data-screen-only>
          Not found? <a href="/patients/new">Record a patient</a>
        </p>
      )}
    </PageFrame>
  );
}

type Found = Awaited<ReturnType<SignedIn["api"]["patient"]["find"]>>[number];

const nameOf = ({ familyName, givenName }: Found): ReactNode => (
  <bdi>{givenName === "" ? familyName : `${familyName}, ${givenName}`}</bdi>
);

const noneWords = (typed: string): string =>
  typed.trim() === ""
    ? "Nothing was typed. Type part of a name or of a record number above."
    : "Nobody by that name or number. Type less of it, or another part.";
