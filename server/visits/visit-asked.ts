import { clinicOf } from "#db/queries/clinic.ts";
import { projectionOf, type StepRow, type TubeRow } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { minuteAt } from "#server/visits/clinic-slots.ts";
import { dayAt, type Instant } from "#shared/day/instant.ts";
import { printDay } from "#shared/day/print-day.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { TubeState } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import type { Asked } from "#shared/visit/may-book.ts";
import { prerequisitesOf, readyFrom } from "#shared/visit/prerequisites.ts";
import { type ActOnTube, isOpenVisit, type NotOn, openTubes, type Visit } from "#shared/visit/visit.ts";
import { visitNeeds } from "#shared/visit/visit-needs.ts";
import { jointWindow } from "#shared/visit/window.ts";
import { windowOf } from "#shared/visit/window-of.ts";

/** For whom and what, and the visit that is moved, if one is. */
export type VisitFor = {
  readonly patientId: string;
  readonly tubes: readonly ActOnTube[];
  readonly moves: Visit | null;
};

/** A step as far as visits read it. */
export const stepOf = ({ tubeId, kind, dueOn, earliestOn, targetOn, latestOn }: StepRow) => ({
  tubeId,
  kind: kind as StepKind,
  dueOn,
  earliest: earliestOn,
  target: targetOn,
  latest: latestOn,
});

/** A tube by its row, as its state was computed. */
const stateOf = (row: TubeRow): TubeState => row.state as TubeState;

/** An open visit of that patient for one of these tubes, other than the one that is moved. */
function refuseDouble(visits: readonly Visit[], tubes: readonly TubeRow[], moves: Visit | null): void {
  for (const visit of visits.filter((one) => isOpenVisit(one) && one.id !== moves?.id)) {
    const twice = tubes.find(({ id }) => openTubes(visit).some(({ tubeId }) => tubeId === id));
    if (twice !== undefined)
      throw new DomainError({
        code: "visit-tube-booked",
        args: { tube: twice.name, day: printDay(visit.on) },
      });
  }
}

/**
 * What a visit asks of a slot by what stands now: how long by the rows, what the room needs, within which days, how soon. Throws
 * `visit-without-tube`, `tube-unknown`, `visit-tube-ended`, `visit-tube-booked`.
 */
export function visitAsked(db: Database, at: Instant, { patientId, tubes, moves }: VisitFor) {
  const { tubes: rows, steps, visits } = projectionOf(db, patientId);
  if (tubes.length === 0) throw new DomainError({ code: "visit-without-tube" });
  const own = tubes.map(({ tubeId, act }) => {
    const row = rows.find(({ id }) => id === tubeId);
    if (row === undefined) throw new DomainError({ code: "tube-unknown" });
    if (row.status === "ended") throw new DomainError({ code: "visit-tube-ended", args: { tube: row.name } });
    return { row, tube: stateOf(row), act };
  });
  refuseDouble(
    visits.map(({ visit }) => visit),
    own.map(({ row }) => row),
    moves,
  );
  const { protocol, calendar } = viewProtocol(db);
  const kinds = own.map(({ tube, act }) => ({ tubeId: tube.id, kind: tube.kind, act }));
  const dated = steps.map(stepOf);
  const ready = readyFrom(
    prerequisitesOf({ tubes: kinds, on: null }, calendar, protocol),
    moves?.prepared ?? [],
    at,
  );
  const { zone } = clinicOf(db);
  const readyAt = ready.from === null ? null : { on: dayAt(ready.from, zone), at: minuteAt(db, ready.from) };
  return {
    own,
    needs: visitNeeds(kinds, protocol.planning),
    window: jointWindow(
      own.map(({ tube, act }) => ({ tubeId: tube.id, window: windowOf(dated, tube.id, act) })),
    ),
    /** A tube is out, or partly out: what is kept free is for that. */
    urgent: own.some(({ tube }) => tube.dislodged !== null),
    /** What the patient said of days the last time. */
    notOn:
      (moves ?? visits.map(({ visit }) => visit).toSorted((a, b) => (a.bookedOn < b.bookedOn ? 1 : -1))[0])
        ?.notOn ?? [],
    visits: visits.map(({ visit }) => visit),
    readyFrom: readyAt,
    protocol,
    asked: (minutes: number, notOn: NotOn): Asked => ({
      minutes,
      needs: visitNeeds(kinds, protocol.planning).needs,
      notOn,
      readyFrom: readyAt,
    }),
  };
}

export type VisitAsked = ReturnType<typeof visitAsked>;
