import { Fragment, type ReactNode } from "react";

import { type NetDay, netWords, rateWords } from "#app/output/net-day-words.ts";
import type { OutputPage } from "#app/tubes/tube-page.ts";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import { printDay } from "#shared/day/print-day.ts";
import { emptiedOn, flushOf, seenIn } from "#shared/review/emptied-on.ts";

import { dayInShort } from "#shared/words/day-in-short.ts";

import { flushWords } from "#shared/words/evidence.ts";
import styles from "./review.module.css";

/** Days that a physician looks at. */
export const WEEK = 7;

type WeekProps = { readonly output: OutputPage };

/** The last days of net output with the flush that was given and what was seen: gaps are rows of their own. */
export function Week({ output }: WeekProps): ReactNode {
  const { days } = output.output;
  const lastSegment = days.at(-1)?.segment ?? 0;
  const shown = days.slice(-WEEK).toReversed();
  const readings = output.readings.map(({ reading }) => reading);
  const columns: readonly Column<NetDay>[] = [
    {
      head: "Day",
      cell: ({ day, whole, segment }) => (
        <>
          <span className={styles.unbroken}>{printDay(day)}</span>
          {whole ? "" : ", part"}
          {segment === lastSegment ? "" : ", before a change"}
        </>
      ),
    },
    { head: "Net", figure: true, cell: netWords },
    { head: "In 24 h", figure: true, cell: rateWords },
    { head: "Flush", figure: true, cell: (day) => flushWords(flushOf(emptiedOn(day, readings))) },
    { head: "Seen", cell: (day) => <Seen words={seenIn(emptiedOn(day, readings))} /> },
    { head: "Complete", cell: dayInShort },
  ];
  return (
    <DataTable
      caption={`The last ${WEEK} days, net of flush`}
      columns={columns}
      rows={shown}
      keyOf={({ from }) => String(from)}
      none="No reading yet."
    />
  );
}

/** Broken between what was seen, and not within it. */
const Seen = ({ words }: { readonly words: readonly string[] }): ReactNode =>
  words.map((word, index) => (
    <Fragment key={word}>
      {index > 0 && ", "}
      <span className={styles.unbroken}>{word}</span>
    </Fragment>
  ));
