import { type CallLog, dayOfTry, isAttempt, type Rang, sameTime, type Tried } from "#shared/call/call-log.ts";
import { minuteOf } from "#shared/call/part-now.ts";
import { type Clocks, ourTime, theirTime } from "#shared/call/reach.ts";
import type { Rung } from "#shared/call/rungs.ts";
import { addWorkingDays, type ClinicCalendar, nextOpenDay } from "#shared/day/clinic-days.ts";
import { addDays, type Day, later } from "#shared/day/day.ts";
import { type CallRows, type DayPart, MOST_ATTEMPTS } from "#shared/protocol/call-rows.ts";

/** What is tried next, when, and by which row. */
export type NextTry = {
  readonly next: "call" | "call back" | Rung;
  readonly on: Day;
  /** The day by which the attempts are used up; null where nothing says so. */
  readonly latest: Day | null;
  /** `HH:MM` by the clinic's clock, where they asked to be rung then. */
  readonly at: string | null;
  readonly part: DayPart | null;
  /** Tries by telephone so far, of so many; null is "no row". */
  readonly tried: number;
  readonly of: number | null;
  readonly source: string | null;
};

type Asked = {
  readonly rows: CallRows | null;
  readonly calendar: ClinicCalendar;
  /** In a trial, which closed days do not interrupt, or so soon after the start that the row asks for a second call on the same day. */
  readonly early: "a trial" | "the first hours" | null;
  /** Hours in which somebody is rung are hours of the patient's clock. */
  readonly clocks: Clocks;
};

const answersRung: Readonly<Record<Rung, (tried: Tried) => boolean>> = {
  "alternate contact": ({ to }) => to === "the alternate contact",
  letter: ({ by, to }) => by === "letter" && to === "the patient",
  "referrer and family doctor": ({ to }) =>
    to === "the referrer and the family doctor" || to === "the referrer" || to === "the family doctor",
  physician: () => false,
};

const HOURS = 60;

type Hours = CallRows["hours"];

const inOrder = (hours: Hours): Hours => hours.toSorted((a, b) => a.from - b.from);

const partAt = (time: string | null, hours: Hours): number =>
  time === null ? -1 : inOrder(hours).findLastIndex(({ from }) => from * HOURS <= minuteOf(time));

const openFrom = (day: Day, calendar: ClinicCalendar): Day => nextOpenDay(day, calendar) ?? day;

/** Another day and another part of it; early on, a later part of the same day while only one call fell on it. */
function otherTime(tries: readonly Rang[], last: Rang, { rows, calendar, early, clocks }: Asked) {
  const hours = inOrder(rows?.hours ?? []);
  const day = dayOfTry(last);
  const part = partAt(last.time === null ? null : theirTime(day, last.time, clocks), hours);
  const onThatDay = tries.filter((tried) => dayOfTry(tried) === day).length;
  if (early !== null && onThatDay === 1 && part >= 0 && part < hours.length - 1)
    return { on: day, part: hours[part + 1]?.part ?? null };
  const next = hours.length === 0 ? null : (hours[(part + 1) % hours.length]?.part ?? null);
  const after = addDays(day, 1);
  return { on: early === "a trial" ? after : openFrom(after, calendar), part: next };
}

/**
 * Within the hours in which somebody is rung, by the patient's clock; what they asked for outside of them is moved to the nearest end, as a closed
 * day is to the next open one. Given and told by the clinic's clock.
 */
function withinHours(
  { on, at }: { readonly on: Day; readonly at: string | null },
  hours: Hours,
  clocks: Clocks,
): string | null {
  const first = inOrder(hours)[0];
  const last = hours.toSorted((a, b) => a.to - b.to).at(-1);
  if (at === null || first === undefined || last === undefined) return at;
  const theirs = minuteOf(theirTime(on, at, clocks));
  const ours = (hour: number): string => ourTime(on, `${String(hour).padStart(2, "0")}:00`, clocks);
  if (theirs < first.from * HOURS) return ours(first.from);
  return theirs >= last.to * HOURS ? ours(last.to - 1) : at;
}

const afterWorkingDays = (day: Day, count: number, calendar: ClinicCalendar): Day =>
  addWorkingDays(day, count, calendar) ?? addDays(day, count);

/** When the last attempt was asked to be followed. Of several at its minute the order says nothing: the earliest that was asked for. */
function askedBack(attempts: readonly Rang[]): Rang["back"] {
  const last = attempts.at(-1);
  const backs = attempts.flatMap((one) =>
    one.back !== null && last !== undefined && (one === last || sameTime(one, last)) ? [one.back] : [],
  );
  const text = ({ on, at }: NonNullable<Rang["back"]>): string => `${on} ${at ?? ""}`;
  return backs.toSorted((a, b) => (text(a) < text(b) ? -1 : 1))[0] ?? null;
}

/** After the attempts: the first rung that nobody has tried, and a physician when none is left. */
function nextRung(
  tries: readonly Tried[],
  { rows, calendar }: Asked,
): Pick<NextTry, "next" | "on" | "source"> {
  const last = tries.reduce((day, tried) => later(day, dayOfTry(tried)), dayOfTry(tries[0] as Tried));
  const open = (rows?.rungs ?? []).find(({ rung }) => !tries.some((tried) => answersRung[rung](tried)));
  if (open === undefined) return { next: "physician", on: openFrom(last, calendar), source: null };
  return {
    next: open.rung,
    on: afterWorkingDays(last, open.afterWorkingDays, calendar),
    source: open.source,
  };
}

/**
 * What is tried next after tries that reached nobody; null while nothing was tried. Attempts on other days and at other times by row, whom
 * they asked to be rung back, then the rungs in their order. Where no row says how often, one try is enough to ask a physician.
 */
export function nextTry({ tries }: Pick<CallLog, "tries">, asked: Asked): NextTry | null {
  const { rows, calendar } = asked;
  const attempts = tries.filter(isAttempt);
  const [first] = attempts;
  const last = attempts.at(-1);
  if (tries.length === 0) return null;
  const row = rows?.notReached ?? null;
  const of = row === null ? null : Math.min(row.attempts, MOST_ATTEMPTS);
  const tried = attempts.length;
  const common = { tried, of, latest: null, at: null, part: null };
  const backs = attempts.filter(({ back }) => back !== null).length;
  const others = tries.length > tried;
  const back = askedBack(attempts);
  if (back !== null && !others && backs <= (of ?? 1)) {
    const on = asked.early === "a trial" ? back.on : openFrom(back.on, calendar);
    const at = withinHours({ on, at: back.at }, rows?.hours ?? [], asked.clocks);
    return { ...common, next: "call back", on, at, source: row?.source ?? null };
  }
  if (row === null || of === null || tried >= of || others) return { ...common, ...nextRung(tries, asked) };
  if (first === undefined || last === undefined) return { ...common, ...nextRung(tries, asked) };
  const latest = afterWorkingDays(dayOfTry(first), row.withinWorkingDays, calendar);
  return { ...common, ...otherTime(attempts, last, asked), next: "call", latest, source: row.source };
}
