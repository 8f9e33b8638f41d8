import type { ReactNode } from "react";
import cells from "#app/lists/cells.module.css";
import type { DuePage, ListLine } from "#app/lists/list-line.ts";
import { PatientCell } from "#app/lists/patient-cell.tsx";
import { StandingCell } from "#app/lists/standing-cell.tsx";
import { TubeCell } from "#app/lists/tube-cell.tsx";
import { VisitCell } from "#app/lists/visit-cell.tsx";
import { DwellStrip } from "#app/strip/dwell-strip.tsx";
import type { StripFacts } from "#app/strip/geometry.ts";
import { AxisHead, cropStyle } from "#app/strip/strip-defs.tsx";
import { marksText } from "#app/strip/strip-words.ts";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import type { Day } from "#shared/day/day.ts";
import { isUndated } from "#shared/step/undated.ts";
import { ownerText } from "#shared/words/steps.ts";
import styles from "./exchange-table.module.css";

type ExchangeTableProps = Pick<DuePage, "today" | "lines">;

/** Tubes under one another on one axis: what lies left of today's rule is late. */
export function ExchangeTable({ today, lines }: ExchangeTableProps): ReactNode {
  const allExample = lines.every(({ row }) => row !== "approved");
  return (
    <table className={styles.table} style={cropStyle}>
      <caption className={styles.caption}>Tubes in the order in which they come due</caption>
      <thead className={styles.head}>
        <tr>
          <th scope="col">Patient</th>
          <th scope="col">Tube</th>
          <th scope="col" className={styles.axis}>
            <span className={styles.unseen}>Dwell and window, in days from today</span>
            <AxisHead />
          </th>
          <th scope="col">Where it stands {allExample && <ExampleMark />}</th>
          <th scope="col">Owner</th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <ExchangeRow key={line.step.id} line={line} today={today} marksExample={!allExample} />
        ))}
      </tbody>
    </table>
  );
}

type ExchangeRowProps = { readonly line: ListLine; readonly today: Day; readonly marksExample: boolean };

function ExchangeRow({ line, today, marksExample }: ExchangeRowProps): ReactNode {
  const facts = factsOf(line, today);
  return (
    <tr className={styles.row}>
      <th scope="row">
        <PatientCell patient={line.patient} />
      </th>
      <td className={styles.tube}>
        <TubeCell tube={line.tube} />
      </td>
      <td className={styles.strip} data-named={marksText(facts.marks) || undefined}>
        <DwellStrip title={line.tube?.name ?? ""} facts={facts} />
      </td>
      <td className={styles.standing}>
        <StandingCell line={line} today={today} marksExample={marksExample} />
        {line.visit !== null && (
          <span className={cells.detail}>
            <VisitCell line={line} />
          </span>
        )}
      </td>
      <td className={styles.owner}>{ownerText(line.owner)}</td>
    </tr>
  );
}

function factsOf({ step, tube }: ListLine, today: Day): StripFacts {
  const dated = !isUndated(step);
  return {
    today,
    clockEarliest: tube?.clockEarliest ?? null,
    clockLatest: tube?.clockLatest ?? null,
    outOn: null,
    earliest: dated ? step.earliest : null,
    target: dated ? step.target : null,
    latest: dated ? step.latest : null,
    marks: tube?.marks ?? [],
  };
}
