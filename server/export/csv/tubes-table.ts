import { NONE } from "#server/export/csv/cells.ts";
import type { CsvTable } from "#server/export/csv/csv-table.ts";
import { eachPatient } from "#server/export/csv/each-patient.ts";
import type { ListLine } from "#server/lists/list-line.ts";
import type { PatientView } from "#server/patients/view-patient.ts";
import type { StoryEntry } from "#server/record/story.ts";
import type { Contact } from "#shared/record/patient/patient-details.ts";
import { labelOf, sheetFields } from "#shared/sheet/sheet-fields.ts";
import { type WrittenField, writeRow } from "#shared/sheet/write-row.ts";
import { tubeName } from "#shared/tube/name.ts";
import type { Opening, Payload } from "#shared/tube/payloads.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { ownerText, stepNames } from "#shared/words/steps.ts";

type Row = {
  readonly cells: Readonly<Record<WrittenField, string>>;
  readonly tube: TubeState;
  readonly next: ListLine | undefined;
};

const notWritten = ["wholeName", "exchangeBy", "removeBy", "reviewBy"];
const isWritten = (field: string): field is WrittenField => !notWritten.includes(field);

/** What an entry opened this tube with; undefined where it opened another, or none. */
function openingIn({ kind, tubes, payload }: StoryEntry, tubeId: string): Opening | undefined {
  if (kind === "converted") {
    const { opens, opening } = payload as Payload<"converted">;
    return opens === tubeId ? opening : undefined;
  }
  const opened = kind === "placed" || kind === "taken over";
  return opened && tubes.includes(tubeId) ? (payload as Opening) : undefined;
}

function noteOf(story: PatientView["story"], tubeId: string): string | null {
  const openings = story.flatMap((entry) =>
    entry.standing === "undone" ? [] : (openingIn(entry, tubeId) ?? []),
  );
  return openings[0]?.note ?? null;
}

/** Under words that no column of a list goes by, so that the import leaves them out. */
const forAPerson = {
  named: ({ tube }: Row) => tubeName(tube),
  state: ({ tube }: Row) => tube.status,
  "next step": ({ next }: Row) => (next === undefined ? NONE : stepNames[next.step.kind]),
  "falls on": ({ next }: Row) => next?.step.dueOn ?? NONE,
  "whose it is": ({ next }: Row) => (next === undefined ? NONE : ownerText(next.owner)),
};

/** Every tube as a row of a list that another Dwellbook brings in; what is out says so, and is set aside there. */
export const tubesTable: CsvTable<Row> = {
  columns: {
    ...Object.fromEntries(
      sheetFields.filter(isWritten).map((field) => [labelOf(field), ({ cells }: Row) => cells[field]]),
    ),
    ...forAPerson,
  },
  *rows(db) {
    for (const { patient, state, steps, story } of eachPatient(db)) {
      const written = { ...patient, contact: patient.contact as Contact };
      for (const tube of state.tubes) {
        const next = steps.find(({ step }) => step.tubeId === tube.id);
        yield { cells: writeRow(written, tube, noteOf(story, tube.id)), tube, next };
      }
    }
  },
};
