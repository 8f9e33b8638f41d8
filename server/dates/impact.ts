import { identifiersOf, type PatientRow, patientById } from "#db/queries/patients.ts";
import { tubeById } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { movedEverywhere, type Tables } from "#server/dates/moved-everywhere.ts";
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

type Moved = { readonly patientId: string; readonly step: MovedStep; readonly key: string };

/** What would have to be done first sorts first: by the day by which it would be done; of a step that would go, by the day that it has. */
function keyOf({ proposed, stood, tubeId, kind }: MovedStep): string {
  const on = proposed?.latest ?? proposed?.target ?? stood?.latest ?? stood?.target ?? "";
  return `${on} ${tubeId} ${kind}`;
}

/** The first so many of all that move, in their order. Of a clinic's twenty thousand tubes no more than a few pages stand in memory. */
class FirstMoved {
  private kept: Moved[] = [];
  private last: string | null = null;

  constructor(private readonly wanted: number) {}

  add(moved: Moved): void {
    if (this.last !== null && moved.key > this.last) return;
    this.kept.push(moved);
    if (this.kept.length < 4 * this.wanted) return;
    this.kept = this.inOrder();
    this.last = this.kept.at(-1)?.key ?? null;
  }

  inOrder(): Moved[] {
    return this.kept.toSorted((a, b) => (a.key < b.key ? -1 : 1)).slice(0, this.wanted);
  }
}

/** Of how many of a patient's tubes such a step would move. */
const tubesWith = (steps: readonly MovedStep[], such: (step: MovedStep) => boolean): number =>
  new Set(steps.filter(such).map(({ tubeId }) => tubeId)).size;

const lineOf = (db: Database, { patientId, step }: Moved): MovedLine => ({
  patient: patientOf(db, patientId),
  tube: { id: step.tubeId, name: tubeById(db, step.tubeId)?.name ?? "" },
  step: step.kind,
  ...proposedDays(step),
});

/** Whom other tables would touch: how many tubes, how many past latest, and one page of them, counted from 1. Writes nothing. */
export function impactOf(db: Database, tables: Tables, page: number): Impact {
  const on = today(db);
  const isPastLatest = ({ proposed }: MovedStep): boolean => (proposed?.latest ?? on) < on;
  const first = new FirstMoved(page * IMPACT_PAGE);
  const counts = { tubes: 0, pastLatest: 0, steps: 0 };
  for (const { patientId, steps } of movedEverywhere(db, tables)) {
    counts.tubes += tubesWith(steps, () => true);
    counts.pastLatest += tubesWith(steps, isPastLatest);
    counts.steps += steps.length;
    for (const step of steps) first.add({ patientId, step, key: keyOf(step) });
  }
  const before = (page - 1) * IMPACT_PAGE;
  return {
    today: on,
    ...counts,
    lines: first
      .inOrder()
      .slice(before)
      .map((moved) => lineOf(db, moved)),
    before,
    hasNext: counts.steps > page * IMPACT_PAGE,
  };
}
