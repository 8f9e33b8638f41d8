import { patientById } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import { type MovedOfPatient, movedEverywhere, type Tables } from "#server/dates/moved-everywhere.ts";
import { type ProposedWindow, proposedDays } from "#server/dates/proposed-days.ts";
import type { Day } from "#shared/day/day.ts";
import { tubeName } from "#shared/tube/name.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** Rows of one page. */
export const IMPACT_PAGE = 100;

/** One step of one tube that would move. */
export type ImpactLine = {
  readonly patientId: string;
  readonly tubeId: string;
  readonly tube: string;
  readonly step: StepKind;
  readonly stood: ProposedWindow | null;
  readonly proposed: ProposedWindow | null;
  /** Its proposed latest day is over. */
  readonly isPast: boolean;
};

export type Impact = {
  /** Tubes of which at least one date would be another. */
  readonly tubes: number;
  /** Of these, the ones that would be past a latest day today. */
  readonly pastLatest: number;
  readonly steps: number;
  readonly lines: readonly (ImpactLine & { readonly patient: string })[];
};

function linesOf({ patientId, state, moved }: MovedOfPatient, on: Day): ImpactLine[] {
  return moved.map((step) => {
    const tube = state.tubes.find(({ id }) => id === step.tubeId);
    const latest = step.proposed?.latest ?? null;
    return {
      patientId,
      tubeId: step.tubeId,
      tube: tube === undefined ? "" : tubeName(tube),
      step: step.kind,
      ...proposedDays(step),
      isPast: latest !== null && latest < on,
    };
  });
}

/** The first of what would have to be done stands on top; a step that would go stands by the day that it has. */
const byDay = ({ proposed, stood }: ImpactLine): string =>
  proposed?.latestOn ?? proposed?.targetOn ?? stood?.latestOn ?? stood?.targetOn ?? "";

const inOrder = (a: ImpactLine, b: ImpactLine): number =>
  byDay(a) === byDay(b)
    ? `${a.tubeId} ${a.step}`.localeCompare(`${b.tubeId} ${b.step}`)
    : byDay(a) < byDay(b)
      ? -1
      : 1;

/** Whom other tables would touch: how many tubes, how many past latest, and one page of them. Writes nothing. */
export function impactOf(db: Database, tables: Tables, page: number): Impact {
  const on = today(db);
  const lines = movedEverywhere(db, tables).flatMap((of) => linesOf(of, on));
  const tubesOf = (some: readonly ImpactLine[]): number => new Set(some.map(({ tubeId }) => tubeId)).size;
  const shown = lines.toSorted(inOrder).slice(page * IMPACT_PAGE, (page + 1) * IMPACT_PAGE);
  return {
    tubes: tubesOf(lines),
    pastLatest: tubesOf(lines.filter(({ isPast }) => isPast)),
    steps: lines.length,
    lines: shown.map((line) => {
      const { familyName = "", givenName = "" } = patientById(db, line.patientId) ?? {};
      return { ...line, patient: `${familyName}, ${givenName}` };
    }),
  };
}
