"use client";

import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import styles from "#app/calendar/calendar.module.css";
import { type Looked, Touched } from "#app/calendar/touched.tsx";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import { NoticeLine } from "#app/ui/notice-line.tsx";
import { newActId } from "#app/ui/recording/act-id.ts";
import { sendAct } from "#app/ui/recording/send-act.ts";
import { unsavedSentence } from "#app/ui/recording/unsaved-sentence.ts";
import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { holidaysWords, shutWords } from "#shared/words/calendar.ts";

type Proposed = Awaited<ReturnType<typeof api.calendar.holidays.query>>;
type Holiday = Proposed["holidays"][number];

/** Each with a box; those on which the clinic is closed already are not checked, and say so. */
export function HolidayBoxes({ proposed }: { readonly proposed: Proposed }): ReactNode {
  const [{ version: seen, holidays, past }] = useState(proposed);
  const [actId] = useState(newActId);
  const [checked, setChecked] = useState<ReadonlySet<Day>>(
    () => new Set(holidays.flatMap(({ on, stands }) => (stands === null ? [on] : []))),
  );
  const [looked, setLooked] = useState<Looked | null>(null);
  const [problem, setProblem] = useState<string | null>(null);

  const look = async (): Promise<void> => {
    setProblem(null);
    const days = holidays.filter(({ on }) => checked.has(on)).map(({ on, name }) => ({ on, name }));
    const asked = { kind: "holidays", days } as const;
    const sent = await sendAct(() => api.calendar.preview.query({ seen, asked, page: 1 }));
    if (sent.kind === "saved") return setLooked({ actId, seen, asked, preview: sent.result });
    setProblem(unsavedSentence(sent, "No answer came from the server. Look again."));
  };

  if (looked !== null)
    return (
      <Touched
        looked={looked}
        press={`Add ${holidaysWords(checked.size)}`}
        back={
          <button type="button" onClick={() => setLooked(null)}>
            Choose again
          </button>
        }
      />
    );
  return (
    <div className={styles.table}>
      <DataTable
        caption="Public holidays that are proposed"
        columns={columnsOf(checked, setChecked)}
        rows={holidays}
        keyOf={({ on }) => on}
        none="The library has none of this year that is still to come."
      />
      {past > 0 && <p>{holidaysWords(past)} of the year are past and not proposed.</p>}
      {holidays.length > 0 && (
        <NoticeLine>
          <button type="button" disabled={checked.size === 0} onClick={() => void look()}>
            Look at whom {holidaysWords(checked.size)} would touch
          </button>
          {problem !== null && <strong>{problem}</strong>}
        </NoticeLine>
      )}
    </div>
  );
}

type SetChecked = (change: (those: ReadonlySet<Day>) => ReadonlySet<Day>) => void;

const columnsOf = (checked: ReadonlySet<Day>, setChecked: SetChecked): readonly Column<Holiday>[] => [
  { head: "Day", cell: ({ on }) => printDay(on) },
  { head: "Holiday", cell: ({ name }) => <bdi>{name}</bdi> },
  { head: "In the calendar", cell: ({ stands }) => shutWords(stands) },
  {
    head: "Close the clinic",
    acts: true,
    cell: ({ on, name, stands }) => (
      <input
        type="checkbox"
        className={styles.box}
        aria-label={`${printDay(on)}, ${name}`}
        checked={checked.has(on)}
        disabled={stands?.code === "closure"}
        onChange={() =>
          setChecked((those) => {
            const next = new Set(those);
            if (!next.delete(on)) next.add(on);
            return next;
          })
        }
      />
    ),
  },
];
