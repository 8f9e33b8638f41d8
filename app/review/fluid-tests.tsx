import type { ReactNode } from "react";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import { printWhen } from "#shared/day/print-day.ts";
import { analytes } from "#shared/review/analyte.ts";
import { fluidAnswer } from "#shared/review/fluid-ratio.ts";
import type { TestValue } from "#shared/review/fluid-test-schema.ts";
import type { FluidTest } from "#shared/review/newest-tests.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { toldFact } from "#shared/words/facts.ts";
import { fluidAnswerWords, printTestValue, publishedWords } from "#shared/words/fluid-tests.ts";
import styles from "./fluid-tests.module.css";

/** A value as the record has it; one that nobody recorded says so. */
const valueWords = ({ analyte }: FluidTest, fact: Fact<TestValue> | null): string =>
  fact === null
    ? "not recorded"
    : toldFact(fact, { what: "value", print: (value) => printTestValue(value, analyte), telling: "marked" });

function serumWords(test: FluidTest): string {
  const { serum, serumOn } = test;
  const taken = serum === null || serumOn === null ? "" : `, ${printWhen(serumOn)}`;
  return `${valueWords(test, serum)}${taken}`;
}

const columnsOf = (tubeId: string): readonly Column<FluidTest>[] => [
  { head: "What", cell: ({ analyte }) => analyte },
  { head: "In the fluid", cell: (test) => valueWords(test, test.fluid) },
  {
    head: "In serum",
    cell: (test) => (
      <>
        {serumWords(test)}
        {test.upperLimit !== null && <div>{`upper limit ${valueWords(test, test.upperLimit)}`}</div>}
      </>
    ),
  },
  {
    head: "Ratio or level",
    cell: (test) => (
      <span className={styles.answer}>{fluidAnswerWords(fluidAnswer(test), test.analyte)}</span>
    ),
  },
  { head: "What was published", cell: ({ analyte }) => publishedWords(analyte) },
  {
    head: "Fluid taken",
    cell: ({ when, eventId }) => (
      <>
        <span className={styles.when}>{printWhen(when)}</span>{" "}
        <a href={`/tubes/${tubeId}#${eventId}`} data-screen-only>
          the entry
        </a>
      </>
    ),
  },
];

type FluidTestsTableProps = { readonly tube: Pick<TubeState, "id" | "fluidTests"> };

/** The newest test of each analyte beside what was published of it. It leaves what that means to whoever reads it. */
export function FluidTestsTable({ tube }: FluidTestsTableProps): ReactNode {
  const rows = analytes.flatMap((analyte) => tube.fluidTests[analyte] ?? []);
  return (
    <div className={styles.tests} data-screen-only={rows.length === 0 || undefined}>
      <DataTable
        caption="Fluid tests, the newest of each"
        columns={columnsOf(tube.id)}
        rows={rows}
        keyOf={({ analyte }) => analyte}
        none="No test of its fluid is recorded."
      />
      {rows.length > 0 && (
        <p className={styles.caution}>
          Values as entered. What was published is shown beside them and decides nothing here; the day after
          surgery is not counted.
        </p>
      )}
    </div>
  );
}
