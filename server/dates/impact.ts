import { identifiersOf, type PatientRow, patientById } from "#db/queries/patients.ts";
import { tubeById } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { type MovedOfPatient, movedEverywhere, type Tables } from "#server/dates/moved-everywhere.ts";
import { type ProposedWindow, proposedDays } from "#server/dates/proposed-days.ts";
import type { Day } from "#shared/day/day.ts";
import type { MovedStep } from "#shared/step/repinned.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** Rows of one page. */
export const IMPACT_PAGE = 100;

/** One step of one tube that would move. */
type MovedLine = {
  readonly patient: PatientOfLine;
  readonly tube: { readonly id: string; readonly name: string };
  readonly step: StepKind;
  readonly stood: ProposedWindow | null;
  readonly proposed: ProposedWindow | null;
};

export type Impact = {
  readonly today: Day;
  /** Tubes of which at least one date would be another. */
  readonly tubes: number;
  /** Of these, the ones that would be past a latest day today. */
  readonly pastLatest: number;
  readonly steps: number;
  readonly lines: readonly MovedLine[];
  readonly before: number;
  readonly hasNext: boolean;
};

/** Whom a line of a list is about. */
type PatientOfLine = Pick<PatientRow, "id" | "familyName" | "givenName" | "birthOn"> & {
  readonly number: string | null;
};

function patientOf(db: Database, id: string): PatientOfLine {
  const { familyName = "", givenName = "", birthOn = null } = patientById(db, id) ?? {};
  return { id, familyName, givenName, birthOn, number: identifiersOf(db, id)[0]?.value ?? null };
}

type Moved = { readonly patientId: string; readonly step: MovedStep };

/** The day by which it would be done; of a step that would go, the day that it has. */
const dayOf = ({ proposed, stood }: MovedStep): string =>
  proposed?.latest ?? proposed?.target ?? stood?.latest ?? stood?.target ?? "";

/** The first of what would have to be done stands on top. */
function inOrder(all: readonly Moved[]): Moved[] {
  const keyed = all.map((moved) => {
    const { step } = moved;
    return { key: `${dayOf(step)} ${step.tubeId} ${step.kind}`, moved };
  });
  return keyed.toSorted((a, b) => (a.key < b.key ? -1 : 1)).map(({ moved }) => moved);
}

/** Of how many tubes such a step would move. A tube is of one patient: no set of all of them is needed. */
function tubesOf(everybody: readonly MovedOfPatient[], such: (step: MovedStep) => boolean): number {
  let count = 0;
  for (const { tubes, steps } of everybody)
    for (const { id } of tubes) if (steps.some((step) => step.tubeId === id && such(step))) count += 1;
  return count;
}

const lineOf = (db: Database, { patientId, step }: Moved): MovedLine => ({
  patient: patientOf(db, patientId),
  tube: { id: step.tubeId, name: tubeById(db, step.tubeId)?.name ?? "" },
  step: step.kind,
  ...proposedDays(step),
});

/** Whom other tables would touch: how many tubes, how many past latest, and one page of them, counted from 1. Writes nothing. */
export function impactOf(db: Database, tables: Tables, page: number): Impact {
  const on = today(db);
  const everybody = movedEverywhere(db, tables);
  const all = everybody.flatMap(({ patientId, steps }) => steps.map((step): Moved => ({ patientId, step })));
  const before = (page - 1) * IMPACT_PAGE;
  const shown = inOrder(all).slice(before, before + IMPACT_PAGE);
  return {
    today: on,
    tubes: tubesOf(everybody, () => true),
    pastLatest: tubesOf(everybody, ({ proposed }) => (proposed?.latest ?? on) < on),
    steps: all.length,
    lines: shown.map((moved) => lineOf(db, moved)),
    before,
    hasNext: all.length > before + IMPACT_PAGE,
  };
}
