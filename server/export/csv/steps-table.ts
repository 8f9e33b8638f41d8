import { NONE, patientColumns, yesNo } from "#server/export/csv/cells.ts";
import type { CsvTable } from "#server/export/csv/csv-table.ts";
import { eachPatient } from "#server/export/csv/each-patient.ts";
import type { ListLine } from "#server/lists/list-line.ts";
import type { PatientView } from "#server/patients/view-patient.ts";
import { ownerText, standingBesideName, stepAsksOf, stepNames } from "#shared/words/steps.ts";
import { whySentence } from "#shared/words/why.ts";

type Row = PatientView & { readonly line: ListLine };

/** A step without an end of its window has none; that is not an unknown day. */
export const stepsTable: CsvTable<Row> = {
  columns: {
    ...patientColumns,
    tube: ({ line }) => line.tube?.name ?? "the patient",
    step: ({ line }) => stepNames[line.step.kind],
    asks: ({ line, state }) =>
      stepAsksOf(line.step.kind, state.tubes.find(({ id }) => id === line.step.tubeId)?.role ?? null),
    earliest: ({ line }) => line.step.earliest ?? NONE,
    target: ({ line }) => line.step.target ?? NONE,
    latest: ({ line }) => line.step.latest ?? NONE,
    "due on": ({ line }) => line.step.dueOn,
    provisional: ({ line }) => yesNo(line.step.provisional),
    standing: ({ line, today }) => standingBesideName(line.step, today),
    "standing on": ({ today }) => today,
    owner: ({ line }) => ownerText(line.owner),
    "protocol's row": ({ line }) => (line.row === "example" ? "EXAMPLE, approved by nobody" : line.row),
    why: ({ line }) => line.step.why.map(whySentence).join(" "),
  },
  *rows(db) {
    for (const view of eachPatient(db)) for (const line of view.steps) yield { ...view, line };
  },
};
