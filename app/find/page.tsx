import type { Metadata } from "next";
import type { ReactNode } from "react";
import { type SignedIn, signedIn } from "#app/_trpc/server.ts";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { Soft } from "#app/ui/soft.tsx";
import { may } from "#shared/access/may.ts";
import type { Day } from "#shared/day/day.ts";
import { printBirth, printDay } from "#shared/day/print-day.ts";
import { finderDraft, readSought } from "#shared/record/finder.ts";

export const metadata: Metadata = { title: "Find a patient - Dwellbook" };

/** Whom the finder of the running head found, by what this person typed last. */
export default async function FindPage(): Promise<ReactNode> {
  const { api, frame, person, today } = await signedIn();
  const typed = (await api.draft.load(finderDraft))?.texts.typed ?? "";
  const { patients, more } = await api.patient.find({ typed });
  const asDate = birthWords(typed, today);
  return (
    <PageFrame frame={frame} heading="Which patient is meant?" lede={<bdi>{typed}</bdi>}>
      {asDate !== null && <p>{asDate}</p>}
      <DataTable
        caption="Patients"
        columns={[
          { head: "Name", cell: (patient) => <Name of={patient} /> },
          { head: "Number", cell: ({ number }) => <bdi>{number ?? "no number"}</bdi> },
          { head: "Born", cell: ({ birthOn }) => (birthOn === null ? "unknown" : printBirth(birthOn)) },
        ]}
        rows={patients}
        keyOf={({ id }) => id}
        none={noneWords(typed)}
      />
      {more && <p>More are meant than stand here: type more of the name, or the number.</p>}
      {may(person, "patient.register") && (
        <p data-screen-only>
          Not found? <a href="/patients/new">Record a patient</a>
        </p>
      )}
    </PageFrame>
  );
}

type Found = Awaited<ReturnType<SignedIn["api"]["patient"]["find"]>>["patients"][number];

const nameOf = ({ familyName, givenName }: Pick<Found, "familyName" | "givenName">): string =>
  givenName === "" ? familyName : `${familyName}, ${givenName}`;

function Name({ of: patient }: { readonly of: Found }): ReactNode {
  const { id, joined } = patient;
  return (
    <>
      <a href={`/patients/${id}`}>
        <bdi>{nameOf(patient)}</bdi>
      </a>
      {joined !== null && (
        <Soft>
          {" "}
          joined with the record of <bdi>{nameOf(joined)}</bdi>
          {joined.number !== null && `, ${joined.number}`}
        </Soft>
      )}
    </>
  );
}

/** How a typed date was understood, so that a search for the wrong day is seen. */
function birthWords(typed: string, today: Day): string | null {
  const births = new Set(readSought(typed, today).flatMap((sought) => sought.births));
  return births.size === 0 ? null : `Looked for as a birth date: ${[...births].map(printDay).join(" or ")}.`;
}

const noneWords = (typed: string): string =>
  typed.trim() === ""
    ? "Nothing was typed. Type part of a name, a number, a birth date or a telephone above."
    : "Nobody by that name, number, birth date or telephone. Type less of it, or another part.";
