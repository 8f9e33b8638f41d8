import { addWorkingDays, type ClinicCalendar } from "#shared/day/clinic-days.ts";
import type { Day } from "#shared/day/day.ts";
import { type Instant, instant, latestOf } from "#shared/day/instant.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { addressOf } from "#shared/protocol/rows/address.ts";
import { type PrerequisiteThing, prerequisiteThings } from "#shared/visit/prerequisite-things.ts";
import type { VisitTube } from "#shared/visit/visit-needs.ts";

/** One thing to settle before a visit, from all rows that ask for it. */
export type Prerequisite = {
  readonly thing: PrerequisiteThing;
  /** Of several rows the most. */
  readonly workingDaysBefore: number;
  /** The last day on which it is settled in time; null while the visit has no day, or where no open day is found. */
  readonly settleBy: Day | null;
  /** Hours, of several rows the most; null where none of them has a lead time. */
  readonly leadHours: number | null;
  /** Each row by its address, in the order of the table. */
  readonly rows: readonly { readonly row: string; readonly says: string; readonly source: string }[];
};

export type VisitAhead = {
  readonly tubes: readonly Pick<VisitTube, "kind" | "act">[];
  readonly on: Day | null;
};

const HOUR_MS = 3_600_000;

const most = (figures: readonly number[]): number | null =>
  figures.length === 0 ? null : Math.max(...figures);

/** What the clinic's rows ask for, that speak of any tube of the visit, each with where it stands in the table. */
const asking = ({ tubes }: VisitAhead, { visits }: Pick<Protocol, "visits">) =>
  (visits?.prerequisites ?? [])
    .map((row, place) => ({ row, place }))
    .filter(({ row: { acts, kinds } }) =>
      tubes.some(({ kind, act }) => acts.includes(act) && (kinds.length === 0 || kinds.includes(kind))),
    )
    .map(({ row, place }) => ({ ...row, row: addressOf("visits.prerequisites", place + 1) }));

/**
 * What has to be settled before a visit, one entry a thing, in the order of the closed list; days are the clinic's working days. Nothing
 * where the table has no row: that is not the same as nothing to settle.
 */
export function prerequisitesOf(
  visit: VisitAhead,
  calendar: ClinicCalendar,
  protocol: Pick<Protocol, "visits">,
): Prerequisite[] {
  const rows = asking(visit, protocol);
  return prerequisiteThings.flatMap((thing): Prerequisite[] => {
    const own = rows.filter((row) => row.thing === thing);
    const workingDaysBefore = most(own.map((row) => row.workingDaysBefore));
    if (workingDaysBefore === null) return [];
    return [
      {
        thing,
        workingDaysBefore,
        settleBy: visit.on === null ? null : addWorkingDays(visit.on, -workingDaysBefore, calendar),
        leadHours: most(own.flatMap(({ leadHours }) => leadHours ?? [])),
        rows: own.map(({ row, says, source }) => ({ row, says, source })),
      },
    ];
  });
}

/** The last day by which the patient is to have said that they come; null where there is no row, no day of the visit or no open day. */
export function confirmBy(
  on: Day | null,
  calendar: ClinicCalendar,
  { visits }: Pick<Protocol, "visits">,
): Day | null {
  const row = visits?.confirmed ?? null;
  return on === null || row === null ? null : addWorkingDays(on, -row.workingDaysBefore, calendar);
}

/**
 * How a thing stands. `settled`: done, for this visit. `does not apply`: asked, and this patient does not need it. `needs its lead time`:
 * asked and needed, and the visit cannot begin before the row's hours have passed, such as a premedication before contrast; it stays
 * open until somebody says that it is settled. No answer is `open`.
 */
export const answerStates = ["open", "settled", "does not apply", "needs its lead time"] as const;
export type AnswerState = (typeof answerStates)[number];

/** What somebody said of a thing. `begun`: when a lead time began or is to begin; without one it has not. */
export type PrerequisiteAnswer = {
  readonly thing: PrerequisiteThing;
  readonly state: AnswerState;
  readonly begun?: Instant | null | undefined;
};

const closing: readonly AnswerState[] = ["settled", "does not apply"];

/** The last answer of a thing counts. */
const answerTo = (thing: PrerequisiteThing, answers: readonly PrerequisiteAnswer[]) =>
  answers.findLast((answer) => answer.thing === thing);

/** Which of the things that a visit asks for are not settled. Answers are in the order in which they were given. */
export const openOf = (
  asked: readonly Prerequisite[],
  answers: readonly PrerequisiteAnswer[],
): Prerequisite[] =>
  asked.filter(({ thing }) => !closing.includes(answerTo(thing, answers)?.state ?? "open"));

/** `from`: the visit begins no sooner; null where nothing has to be waited for. */
export type Ready = {
  readonly from: Instant | null;
  /** Things of which somebody said that they need their lead time, and no row says how long that is. */
  readonly cannotTell: readonly PrerequisiteThing[];
};

/**
 * When a visit can begin at the soonest, by the things that need their lead time: hours that pass on any clock, from when each has begun,
 * or from now where it has not. What only stays open holds nothing back, since nobody knows yet whether it is needed.
 */
export function readyFrom(
  asked: readonly Prerequisite[],
  answers: readonly PrerequisiteAnswer[],
  now: Instant,
): Ready {
  const needed = prerequisiteThings.flatMap((thing) => {
    const answer = answerTo(thing, answers);
    if (answer?.state !== "needs its lead time") return [];
    const hours = asked.find((one) => one.thing === thing)?.leadHours ?? null;
    return [{ thing, hours, begun: answer.begun ?? now }];
  });
  const ends = needed.flatMap(({ hours, begun }) => (hours === null ? [] : instant(begun + hours * HOUR_MS)));
  return {
    from: ends.length === 0 ? null : latestOf(...ends),
    cannotTell: needed.flatMap(({ thing, hours }) => (hours === null ? thing : [])),
  };
}
