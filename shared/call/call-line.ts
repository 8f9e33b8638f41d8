import { bestSpans, type Span } from "#shared/call/best-times.ts";
import { type CallLog, dayOfTry, isAttempt, type Tried } from "#shared/call/call-log.ts";
import { type NextTry, nextTry } from "#shared/call/next-try.ts";
import type { Callee, LetterTo, TryOutcome } from "#shared/call/outcomes.ts";
import { clocksOf } from "#shared/call/reach.ts";
import { type ClinicCalendar, nextOpenDay } from "#shared/day/clinic-days.ts";
import { type Day, earlier, isDay, later } from "#shared/day/day.ts";
import type { Zone } from "#shared/day/instant.ts";
import { type DayPart, dayParts, MOST_ATTEMPTS } from "#shared/protocol/call-rows.ts";
import type { Books } from "#shared/step/open-steps.ts";
import { callKinds, type OpenStep } from "#shared/step/step.ts";
import { earliestOn, firstHoursUntil } from "#shared/step/trial-calls.ts";
import { numberedTitle } from "#shared/tube/name.ts";
import type { PatientTubes } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** What somebody is rung about, or what follows when nobody was reached. */
export const ringingKinds: readonly StepKind[] = [
  "red flag",
  "alarm",
  ...callKinds,
  "clamp trial",
  "ask again",
  "diary",
  "whereabouts",
  "tell of the tube",
];

/** What is tried next and when, as far as the line says it. */
export type NextOfLine = Pick<NextTry, "next" | "at" | "part" | "tried" | "of"> & { readonly on: Day };

/** One try that reached nobody. */
export type TryOfLine = {
  readonly on: Day;
  readonly time: string | null;
  readonly to: Callee | LetterTo;
  /** Null of a letter. */
  readonly outcome: TryOutcome | null;
};

/** What was tried, what is next, and who covers the nights and closed days of each trial that runs; null where nobody said. */
export type CallStory = {
  /** Null while nothing was tried. */
  readonly next: NextOfLine | null;
  readonly tries: readonly TryOfLine[];
  readonly trials: readonly {
    readonly tubeId: string;
    readonly tube: string;
    readonly covers: string | null;
  }[];
};

/** One patient and all of that patient's tubes, as the call list has it. Today is not in it. */
export type CallLine = {
  /** From this day on somebody is rung. */
  readonly dueOn: Day;
  /** A red flag is open and handed to nobody. */
  readonly flagPending: boolean;
  readonly inTrial: boolean;
  /** The last day of a tube's first hours by the row; null where it has none. */
  readonly firstHoursUntil: Day | null;
  readonly latest: Day | null;
  /** Of those by telephone; none once another way is tried. No row asks for one. */
  readonly attemptsLeft: number;
  /** The zone of the patient's own clock; null: the clinic's. */
  readonly livesIn: Zone | null;
  /** Best times by that clock; none where nobody said any that can be read. */
  readonly best: readonly Span[];
  readonly story: CallStory;
};

type Patient = Pick<PatientTubes, "tubes" | "calls" | "redFlags">;

const asTryOfLine = (tried: Tried): TryOfLine => ({
  on: dayOfTry(tried),
  time: tried.time,
  to: tried.to,
  outcome: tried.by === "telephone" ? tried.outcome : null,
});

const partIn = (value: unknown): DayPart | null => dayParts.find((part) => part === value) ?? null;

/** What the call's own step says of the next try. */
function nextOfStep(step: OpenStep): NextOfLine | null {
  const args = step.why.find(({ code }) => code === "next-try")?.args;
  const day = args?.day;
  if (args === undefined || typeof day !== "string" || !isDay(day)) return null;
  return {
    next: args.next as NextTry["next"],
    on: day,
    at: typeof args.at === "string" ? args.at : null,
    part: partIn(args.part),
    tried: Number(args.tried),
    of: args.of === null ? null : Number(args.of),
  };
}

/** Tries that the count of the next one counts, and whatever followed them. */
function countedTries({ tries }: CallLog, tried: number): readonly Tried[] {
  const attempts = tries.filter(isAttempt);
  const first = attempts.at(-tried);
  return tried === 0 || first === undefined ? tries : tries.slice(tries.indexOf(first));
}

type Ladder = { readonly next: NextOfLine | null; readonly tries: readonly Tried[] };

/** What follows what was tried: by the call's step, and where nothing else asks for a call by the same rows. */
function ladderOf({ tubes, calls }: Patient, steps: readonly OpenStep[], books: Books): Ladder {
  const own = steps.map(nextOfStep).find((next) => next !== null);
  if (own) return { next: own, tries: countedTries(calls, own.tried) };
  const asked = steps.filter(({ kind }) => kind !== "red flag");
  const [first] = asked.toSorted((a, b) =>
    a.dueOn < b.dueOn || (a.dueOn === b.dueOn && a.id < b.id) ? -1 : 1,
  );
  const tries = first === undefined ? [] : calls.tries.filter((tried) => dayOfTry(tried) >= first.dueOn);
  const last = tries.at(-1);
  if (first === undefined || last === undefined) return { next: null, tries: [] };
  const early = earliestOn(
    tubes.map((tube) => ({ tube, protocol: books.protocol(tube.pins.protocol) })),
    dayOfTry(last),
  );
  const rows = books.protocol(first.pins.protocol).calls;
  const clocks = clocksOf(books.zone, books.reach);
  const next = nextTry({ tries }, { rows, calendar: books.calendar(first.pins.calendar), early, clocks });
  if (next === null) return { next: null, tries };
  const { on, at, part, tried, of } = next;
  return { next: { next: next.next, on, at, part, tried, of }, tries };
}

/** From when on a physician lets somebody be called again: on a day on which the clinic is open. */
function onOpenDay({ again }: CallLog, calendar: ClinicCalendar): Pick<CallLog, "again"> {
  if (again?.on == null) return { again };
  return { again: { ...again, on: nextOpenDay(again.on, calendar) ?? again.on } };
}

/** What came up after the last try waits for no next one; what a physician put off comes back on that day. */
function dueDay(step: OpenStep, { again }: Pick<CallLog, "again">, { next, tries }: Ladder): Day {
  const last = tries.at(-1);
  if (step.kind === "red flag") return step.dueOn;
  if (next !== null && last !== undefined && step.dueOn <= dayOfTry(last)) return next.on;
  const on = again?.on ?? null;
  return again === null || on === null || step.dueOn > again.recordedOn ? step.dueOn : later(step.dueOn, on);
}

function attemptsLeft({ next }: Ladder, step: OpenStep, books: Books): number {
  if (next !== null) {
    const telephones = next.next === "call" || next.next === "call back";
    return telephones ? Math.max(0, (next.of ?? 1) - next.tried) : 0;
  }
  return Math.min(books.protocol(step.pins.protocol).calls?.notReached?.attempts ?? 1, MOST_ATTEMPTS);
}

const first = (days: readonly (Day | null)[]): Day | null =>
  days.reduce((found, day) => (found === null || day === null ? (found ?? day) : earlier(found, day)), null);
const last = (days: readonly (Day | null)[]): Day | null =>
  days.reduce((found, day) => (found === null || day === null ? (found ?? day) : later(found, day)), null);

/**
 * A patient's line in the call list: one for all tubes, from the open steps that somebody is rung about. Null where there is none. The order
 * of steps changes nothing. Pure.
 */
export function callLineOf(patient: Patient, steps: readonly OpenStep[], books: Books): CallLine | null {
  const ringing = steps
    .filter(({ kind }) => ringingKinds.includes(kind))
    .toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const [some] = ringing;
  if (some === undefined) return null;
  const ladder = ladderOf(patient, ringing, books);
  const again = onOpenDay(patient.calls, books.calendar(some.pins.calendar));
  const dueOn = first(ringing.map((step) => dueDay(step, again, ladder))) ?? some.dueOn;
  const running = patient.tubes.filter(({ status, trial }) => status === "in" && trial?.state === "running");
  return {
    dueOn,
    flagPending: patient.redFlags.some(({ handed }) => handed === null),
    inTrial: running.length > 0,
    firstHoursUntil: last(
      patient.tubes.map((tube) => firstHoursUntil({ tube, protocol: books.protocol(tube.pins.protocol) })),
    ),
    latest: first(ringing.map(({ latest }) => latest)),
    attemptsLeft: attemptsLeft(ladder, some, books),
    livesIn: books.reach.livesIn,
    best: bestSpans(books.reach.bestTimes, books.protocol(some.pins.protocol).calls?.hours ?? []),
    story: {
      next: ladder.next,
      tries: ladder.tries.map(asTryOfLine),
      trials: running.map((tube) => ({
        tubeId: tube.id,
        tube: numberedTitle(tube),
        covers: tube.trial?.covers ?? null,
      })),
    },
  };
}
