import { allStaff } from "#db/queries/staff.ts";
import { minute, orUnknown, patientColumns, UNKNOWN } from "#server/export/csv/cells.ts";
import type { CsvTable } from "#server/export/csv/csv-table.ts";
import { eachPatient } from "#server/export/csv/each-patient.ts";
import type { PatientView } from "#server/patients/view-patient.ts";
import type { StoryEntry } from "#server/record/story.ts";
import { printWhen } from "#shared/day/print-day.ts";
import { tubeName } from "#shared/tube/name.ts";
import { storySentence } from "#shared/words/events.ts";
import type { NameOf } from "#shared/words/sentence.ts";

type Row = PatientView & { readonly entry: StoryEntry; readonly nameOf: NameOf };

/** What an entry of another patient said leaves no trace. */
const isMisfiled = ({ entry }: Row): boolean => entry.standing === "wrong patient";

function tubeNames({ entry, state }: Row): string {
  if (entry.tubes.length === 0) return "the patient";
  const names = new Map(state.tubes.map((tube) => [tube.id, tubeName(tube)]));
  return entry.tubes.map((id) => names.get(id) ?? "a tube without a record").join("; ");
}

const unlessMisfiled =
  (cell: (row: Row) => string) =>
  (row: Row): string =>
    isMisfiled(row) ? "" : cell(row);

/** Oldest first. A corrected entry is told as it stands now; what it said before is in the whole record. */
export const entriesTable: CsvTable<Row> = {
  columns: {
    ...patientColumns,
    tubes: unlessMisfiled(tubeNames),
    "happened, earliest": unlessMisfiled(({ entry }) => orUnknown(entry.when.earliest)),
    "happened, latest": unlessMisfiled(({ entry }) => orUnknown(entry.when.latest)),
    "happened, in words": unlessMisfiled(({ entry }) => printWhen(entry.when)),
    time: unlessMisfiled(({ entry }) => entry.time ?? UNKNOWN),
    entry: ({ entry }) => entry.kind,
    what: (row) => (isMisfiled(row) ? "Voided, wrong patient." : storySentence(row.entry, row.nameOf)),
    standing: ({ entry }) => entry.standing,
    "reason of the change": ({ entry }) => entry.reason ?? "",
    recorded: ({ entry, zone }) => minute(entry.recordedAt, zone),
    "recorded by": ({ entry }) => entry.recordedBy,
  },
  *rows(db) {
    const names = new Map(allStaff(db).map(({ id, fullName }) => [id, fullName]));
    const nameOf: NameOf = (id) => names.get(id) ?? UNKNOWN;
    for (const view of eachPatient(db))
      for (const entry of view.story.toReversed()) yield { ...view, entry, nameOf };
  },
};
