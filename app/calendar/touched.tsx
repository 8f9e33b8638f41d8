"use client";

import { type ReactNode, useEffect, useRef, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import styles from "#app/calendar/calendar.module.css";
import { besideColumn, movedColumns } from "#app/dates/moved-columns.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import { NoticeLine } from "#app/ui/notice-line.tsx";
import { newActId } from "#app/ui/recording/act-id.ts";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";
import { UndoNotice } from "#app/ui/undo-notice.tsx";
import { LostSlots } from "#app/visit/lost-slots.tsx";
import type { CalendarAsked } from "#shared/record/calendar/asked.ts";
import { calendarChangeWords } from "#shared/words/calendar.ts";
import { proposedWords, touchedWords, waitingWords } from "#shared/words/proposed-days.ts";

export type Preview = Awaited<ReturnType<typeof api.calendar.preview.query>>;

/** A change that was looked at and not yet made. */
export type Looked = {
  readonly actId: string;
  /** The version of the calendar that the page showed. */
  readonly seen: number;
  readonly asked: CalendarAsked;
  readonly preview: Preview;
};

type TouchedProps = {
  readonly looked: Looked;
  /** "Close the clinic": the act in words. */
  readonly press: string;
  /** Leads back to what was typed or chosen. */
  readonly back: ReactNode;
  readonly made?: () => Promise<unknown>;
};

type Made = { readonly version: number; readonly tubes: number };

const wordsOf = ({ changes }: Preview): string => changes.map(calendarChangeWords).join(" ");

/** What a change of the calendar would do, each date of it, and the press that makes it. Has the focus: Enter makes it. */
export function Touched({ looked, press, back, made }: TouchedProps): ReactNode {
  const { actId, seen, asked, preview } = looked;
  const [sending, setSending] = useState(false);
  const [done, setDone] = useState<Made | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => button.current?.focus(), []);

  const make = async (): Promise<void> => {
    setSending(true);
    setProblem(null);
    const sent = await sendAct(() => api.calendar.change.mutate({ actId, seen, asked }));
    setSending(false);
    if (sent.kind !== "saved")
      return setProblem(
        unsavedSentence(sent, "No answer came from the server. Press again: it is done only once."),
      );
    await made?.().catch(() => undefined);
    setDone(sent.result);
  };

  if (done !== null)
    return <MadeNotice made={done} seen={seen} said={wordsOf(preview)} lost={preview.lost.length} />;
  if (preview.changes.length === 0)
    return <NoticeLine>The calendar stands like this already: there is nothing to save. {back}</NoticeLine>;
  return (
    <section className={styles.touched}>
      <div className={styles.changes}>
        {preview.changes.map((change) => (
          <p key={calendarChangeWords(change)}>{calendarChangeWords(change)}</p>
        ))}
      </div>
      <p>
        {touchedWords(preview)} {waitingWords(preview.waiting)} Nothing is saved yet; once it is, the old
        dates stand until somebody confirms the new ones.
      </p>
      <NoticeLine>
        <button ref={button} type="button" disabled={sending} onClick={() => void make()}>
          {press}
        </button>
        {back}
        {problem !== null && <strong>{problem}</strong>}
      </NoticeLine>
      <LostSlots lost={preview.lost} />
      <TouchedDates looked={looked} />
    </section>
  );
}

/** The first of them came with the preview; the rest are asked for. */
function TouchedDates({ looked: { seen, asked, preview } }: { readonly looked: Looked }): ReactNode {
  const [pages, setPages] = useState<readonly Preview[]>([preview]);
  const last = pages.at(-1) ?? preview;
  const more = async (): Promise<void> => {
    const page = pages.length + 1;
    const sent = await sendAct(() => api.calendar.preview.query({ seen, asked, page }));
    if (sent.kind === "saved") setPages((those) => [...those, sent.result]);
  };
  return (
    <div>
      <DataTable
        caption="Dates that would be proposed"
        columns={[...movedColumns(preview.today), besideColumn]}
        rows={pages.flatMap(({ lines }) => lines)}
        keyOf={({ tube, step }) => `${tube.id} ${step}`}
        total={preview.steps}
        none="No date that stands would be another. Clocks that start from now on go by the new calendar."
      />
      {last.hasNext && (
        <button type="button" onClick={() => void more()}>
          Show more of them
        </button>
      )}
    </div>
  );
}

type MadeNoticeProps = {
  readonly made: Made;
  readonly seen: number;
  readonly said: string;
  /** How many visits it leaves where none can be booked any more. */
  readonly lost: number;
};

function MadeNotice({ made: { version, tubes }, seen, said, lost }: MadeNoticeProps): ReactNode {
  const [actId] = useState(newActId);
  const notice = useRef<HTMLDivElement>(null);
  useEffect(() => notice.current?.focus(), []);
  const undo = () => api.calendar.restore.mutate({ actId, seen: version, version: seen });
  return (
    <div ref={notice} tabIndex={-1}>
      <UndoNotice
        said={`${said} ${proposedWords(tubes)}`}
        undo={undo}
        after="The calendar before stands again, and nothing is proposed by the change."
      >
        {lost > 0 && <a href="/visits">Move the visits that cannot stay</a>}
        {tubes > 0 && <a href="/dates">Look at the proposed dates</a>}
        <a href="/calendar">To the calendar</a>
      </UndoNotice>
    </div>
  );
}
