import type { ReactNode } from "react";
import type { SignedIn } from "#app/_trpc/server.ts";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import { Soft } from "#app/ui/soft.tsx";
import { may, mayUndo } from "#shared/access/may.ts";
import type { Person } from "#shared/access/person.ts";
import type { Zone } from "#shared/day/instant.ts";
import { printInstant, printWhen } from "#shared/day/print-day.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import { storySentence } from "#shared/words/events.ts";
import type { NameOf } from "#shared/words/sentence.ts";
import styles from "./story.module.css";

/** What no form can correct: a visit, a call and a red flag are said of on their own pages, an amendment is undone. */
const withoutForm: Readonly<Record<Exclude<EventKind, FormKind>, true>> = {
  "dates confirmed": true,
  "records joined": true,
  "visit booked": true,
  "visit moved": true,
  "visit noted": true,
  "visit prepared": true,
  "call attempted": true,
  "red flag raised": true,
  "red flag handed": true,
  "red flag done": true,
  amended: true,
  voided: true,
};

export type StoryEntry = Awaited<ReturnType<SignedIn["api"]["patient"]["view"]>>["story"][number];

type StoryProps = {
  readonly story: readonly StoryEntry[];
  readonly patientId: string;
  readonly zone: Zone;
  readonly nameOf: NameOf;
  readonly person: Person;
  /** Names tubes by id on a page with several; left out on a tube's own page. */
  readonly tubeName?: (tubeId: string) => string;
};

/** Everything that was recorded, newest first: what, when, who wrote it and when. What was undone stays, struck out, with its reason. */
export function Story({ story, patientId, zone, nameOf, person, tubeName }: StoryProps): ReactNode {
  const columns: readonly Column<StoryEntry>[] = [
    { head: "When", cell: (entry) => <WhenCell entry={entry} /> },
    ...(tubeName === undefined
      ? []
      : [{ head: "Tube", cell: ({ tubes }: StoryEntry) => tubes.map(tubeName).join("; ") || "the patient" }]),
    { head: "What", cell: (entry) => <WhatCell entry={entry} nameOf={nameOf} /> },
    {
      head: "Recorded by",
      cell: ({ recordedBy, recordedAt }) => (
        <>
          {recordedBy}{" "}
          <span className={styles.when}>
            <Soft>{printInstant(recordedAt, zone)}</Soft>
          </span>
        </>
      ),
    },
    { head: "Change", cell: (entry) => <ChangeCell {...{ entry, patientId, person }} /> },
  ];
  return (
    <DataTable
      caption="Story, newest first"
      columns={columns}
      rows={story}
      keyOf={({ eventId }) => eventId}
      none="Nothing is recorded yet."
    />
  );
}

const isUndone = ({ standing }: StoryEntry): boolean => standing === "undone" || standing === "wrong patient";

function WhenCell({ entry }: { readonly entry: StoryEntry }): ReactNode {
  const { when, time, eventId } = entry;
  if (entry.standing === "wrong patient") return <span id={eventId} />;
  const said = time === null ? printWhen(when) : `${printWhen(when)}, ${time}`;
  return (
    <span className={styles.when} id={eventId}>
      {isUndone(entry) ? <s>{said}</s> : said}
    </span>
  );
}

/** An undo pressed at once has no reason of its own beyond its name. */
const becauseWords = (what: string, { reason }: StoryEntry): string =>
  reason === null || reason.toLowerCase() === what.toLowerCase() ? `${what}.` : `${what}: ${reason}`;

function WhatCell({ entry, nameOf }: { readonly entry: StoryEntry; readonly nameOf: NameOf }): ReactNode {
  if (entry.standing === "wrong patient") return <strong>Voided, wrong patient.</strong>;
  const sentence = <bdi>{storySentence(entry, nameOf)}</bdi>;
  if (isUndone(entry))
    return (
      <>
        <s>{sentence}</s> <strong>{becauseWords("Undone", entry)}</strong>
      </>
    );
  if (entry.standing === "corrected")
    return (
      <>
        {sentence} <strong>{becauseWords("Corrected", entry)}</strong>
      </>
    );
  return sentence;
}

type ChangeCellProps = Pick<StoryProps, "patientId" | "person"> & { readonly entry: StoryEntry };

/** Correct and undo, where this person may; an entry that is undone is changed no more. */
function ChangeCell({ entry, patientId, person }: ChangeCellProps): ReactNode {
  if (isUndone(entry)) return "";
  const { eventId, actId, kind } = entry;
  const hasForm = !Object.hasOwn(withoutForm, kind);
  const mayCorrect = may(person, "record.amended") && hasForm;
  return (
    <span className={styles.change}>
      {mayCorrect && <a href={`/patients/${patientId}/correct/${eventId}`}>Correct</a>}
      {mayUndo(person, entry.recordedById) && <a href={`/patients/${patientId}/undo/${actId}`}>Undo</a>}
    </span>
  );
}
