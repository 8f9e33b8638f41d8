import type { ReactNode } from "react";
import type { OutputPage } from "#app/tubes/tube-page.ts";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import { Soft } from "#app/ui/soft.tsx";
import { may } from "#shared/access/may.ts";
import type { Person } from "#shared/access/person.ts";
import { printInstant } from "#shared/day/print-day.ts";
import { netVolume } from "#shared/output/net-volume.ts";
import type { Reading } from "#shared/output/reading.ts";
import { flushWords } from "#shared/words/evidence.ts";
import { toldFact } from "#shared/words/facts.ts";
import { printVolume } from "#shared/words/output.ts";
import styles from "./output.module.css";

type Row = OutputPage["readings"][number];

/** What was measured, and what was said where that is not the same: "59.1 mL, typed 2 oz". */
function drainedWords({ reading }: Row): string {
  const { gross, asSpoken, basis } = reading;
  const said = toldFact(gross, { what: "volume", print: printVolume, telling: "marked" });
  const typed = /^[\d.]+$|^\?$/.test(asSpoken.trim()) || asSpoken === "" ? "" : `, typed ${asSpoken}`;
  return `${said}${basis === "already net" ? ", already net" : ""}${typed}`;
}

/** Everything else that was seen or put in. */
function seenWords({ reading }: Row): string {
  const { characters, leak, airLeak, swing, symptoms, otherIn, procedureAspirate, measuredBy } = reading;
  return [
    ...characters,
    leak === "not recorded" ? "" : leak === "none" ? "no leak" : `${leak} round the tube`,
    airLeak === "not recorded" ? "" : airLeak === "none" ? "no air leak" : "air leak",
    swing === "not recorded" ? "" : `swing ${swing}`,
    symptoms === "not recorded" ? "" : `felt ${symptoms.join(", ") || "nothing"}`,
    ...otherIn.map(({ fluid, ul }) => `${fluid} ${printVolume(ul)} put in`),
    procedureAspirate ? "drawn off at the procedure: no output" : "",
    measuredBy === "not recorded" ? "" : `by ${measuredBy}`,
  ]
    .filter((part) => part !== "")
    .join(", ");
}

/** Why a net cannot be told stands beside its day. */
function netCell(reading: Reading, flushOrdered: boolean): string {
  const net = netVolume(reading, flushOrdered);
  return net.kind === "known" ? printVolume(net.ul) : "cannot tell";
}

type ReadingsTableProps = { readonly tubeId: string; readonly output: OutputPage; readonly person: Person };

/** The readings that stand, newest first, with who told and who wrote them. */
export function ReadingsTable({ tubeId, output, person }: ReadingsTableProps): ReactNode {
  const { zone, readings, flushOrdered } = output;
  const columns: readonly Column<Row>[] = [
    {
      head: "Emptied at",
      cell: ({ reading }) => <span className={styles.when}>{printInstant(reading.to, zone)}</span>,
    },
    {
      head: "Since",
      cell: ({ reading: { from } }) =>
        from === "since last emptying" ? (
          <span className={styles.when}>the last</span>
        ) : (
          printInstant(from, zone)
        ),
    },
    { head: "Drained", figure: true, cell: drainedWords },
    { head: "Flush given", figure: true, cell: ({ reading }) => flushWords(reading.flushGiven) },
    { head: "Net", figure: true, cell: ({ reading }) => netCell(reading, flushOrdered) },
    { head: "Seen", cell: seenWords },
    {
      head: "Told and recorded by",
      cell: ({ reading, by, recordedAt }) => (
        <>
          <bdi>{reading.reportedBy}</bdi>; {by}{" "}
          <span className={styles.when}>
            <Soft>{printInstant(recordedAt, zone)}</Soft>
          </span>
        </>
      ),
    },
    { head: "Change", cell: (row) => <ChangeCell row={row} tubeId={tubeId} person={person} /> },
  ];
  return (
    <DataTable
      caption="Readings, newest first"
      columns={columns}
      rows={readings}
      keyOf={({ reading }) => reading.id}
      none="No reading yet."
    />
  );
}

type ChangeCellProps = { readonly row: Row; readonly tubeId: string; readonly person: Person };

function ChangeCell({ row, tubeId, person }: ChangeCellProps): ReactNode {
  const place = `/tubes/${tubeId}/output/${row.reading.id}`;
  return (
    <span className={styles.change}>
      {may(person, "reading.corrected") && <a href={`${place}/correct`}>Correct</a>}
      {may(person, "reading.voided") && <a href={`${place}/void`}>Void</a>}
    </span>
  );
}
