import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { type SignedIn, signedIn } from "#app/_trpc/server.ts";
import styles from "#app/import/import.module.css";
import { UndoBatch } from "#app/import/undo-batch.tsx";
import { fullNameOf } from "#app/patients/identity-of.ts";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { printInstant } from "#shared/day/print-day.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

export const metadata: Metadata = { title: "Take a list back - Dwellbook" };

const HEADING = "Should this list be taken back?";

type TakingBack = Awaited<ReturnType<SignedIn["api"]["sheet"]["takingBack"]>>;

/** One list that was brought in, before all of it is taken back: what would go, and what later work rests on it. */
export default async function UndoListPage({
  params,
}: {
  readonly params: Promise<{ readonly act: string }>;
}): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  if (!may(person, "sheet.takingBack"))
    return (
      <PageFrame here="Clinic's books" frame={frame} heading={HEADING}>
        <NotForYou back="/" />
      </PageFrame>
    );
  const { act: actId } = await params;
  const { zone, batch, resting } = await orNotFound(api.sheet.takingBack({ actId }));
  const { fileName, tubes, standing, at, who } = batch;
  return (
    <PageFrame here="Clinic's books" frame={frame} heading={HEADING} lede={<bdi>{fileName}</bdi>}>
      <p>
        {tubesIn(tubes)} brought in by <bdi>{who}</bdi>, {printInstant(at, zone)}.
      </p>
      {standing === 0 ? <p>It is taken back.</p> : <Asked {...{ actId, tubes, resting }} />}
      <p data-screen-only>
        <a href="/import">Back to the lists</a>
      </p>
    </PageFrame>
  );
}

const tubesIn = (count: number): string => `${count} ${count === 1 ? "tube" : "tubes"}`;

type AskedProps = Pick<TakingBack, "resting"> & { readonly actId: string; readonly tubes: number };

function Asked({ actId, tubes, resting }: AskedProps): ReactNode {
  if (resting.count > 0) return <RestingOn resting={resting} />;
  return (
    <>
      <p>
        No entry made later keeps it from being taken back. All of it goes in one act and stays in the story
        as undone; a record in which something else was recorded stays.
      </p>
      <UndoBatch undoes={actId} what={tubesIn(tubes)} />
    </>
  );
}

/** Which entries rest on the list, in short; where that is not what is wrong, the whole sentence. */
const restingWords = (refusal: Refusal): string => String(refusal.args?.entries ?? refusalSentence(refusal));

function RestingOn({ resting: { count, named } }: Pick<TakingBack, "resting">): ReactNode {
  const more = count - named.length;
  return (
    <section className={styles.resting}>
      <h2>
        {count === 1 ? "Later work rests on 1 record" : `Later work rests on ${count} records`} of this list
      </h2>
      <p>
        The list is taken back as a whole or not at all. Undo the later entries first, the newest first; or
        leave the list and correct or void the rows that are wrong, each in its own record.
      </p>
      <ul>
        {named.map(({ patientId, refusals, ...name }) => (
          <li key={patientId}>
            <a href={`/patients/${patientId}#story`}>
              <bdi>{fullNameOf(name)}</bdi>
            </a>
            : {refusals.map(restingWords).join(", ")}
          </li>
        ))}
        {more > 0 && <li>and {more} more</li>}
      </ul>
    </section>
  );
}
