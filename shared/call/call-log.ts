import type { Callee, LetterTo, TryOutcome } from "#shared/call/outcomes.ts";
import { isReached } from "#shared/call/outcomes.ts";
import type { Day } from "#shared/day/day.ts";
import type { When } from "#shared/day/when.ts";

type RestsOn = { readonly eventId: string; readonly recordedOn: Day };
type At = RestsOn & { readonly when: When; readonly time: string | null };

/** One try to reach somebody, which did not. */
export type Tried = At &
  (
    | {
        readonly by: "telephone";
        readonly to: Callee;
        readonly outcome: TryOutcome;
        readonly number: string | null;
        readonly back: { readonly on: Day; readonly at: string | null } | null;
      }
    | { readonly by: "letter"; readonly to: LetterTo }
  );

export type Rang = Extract<Tried, { readonly by: "telephone" }>;

/** The last day on which it may have been. */
export const dayOfTry = ({ when, recordedOn }: Pick<Tried, "when" | "recordedOn">): Day =>
  when.latest ?? recordedOn;

/** Whoever is rung first; the alternate contact and the doctors are rungs of their own. */
const isFirstRung = (to: Callee): boolean =>
  to === "the patient" || to === "the home nurse" || to === "the ward";

export const isAttempt = (tried: Tried): tried is Rang => tried.by === "telephone" && isFirstRung(tried.to);

/** The last call that reached somebody, and what had come up by then. */
export type Reached = At & {
  /** Visits that nobody came to, and the entry that said where the patient is. */
  readonly missed: readonly string[];
  readonly whereabouts: string | null;
};

/** Tries from the first to whatever ended them, as the figures count them. */
export type Round = {
  readonly on: Day;
  /** Somebody was reached at an attempt by telephone or another way, or a physician decided that nobody was. */
  readonly how: "at an attempt" | "another way" | "not reached";
  /** Attempts by telephone, the one that reached somebody among them. */
  readonly attempts: number;
};

/** What was tried to reach a patient. */
export type CallLog = {
  /** Since somebody was last reached, or since a physician decided, in order. */
  readonly tries: readonly Tried[];
  readonly reached: Reached | null;
  /** What a physician decided after nobody was reached: from which day on, or no more. */
  readonly again: (RestsOn & { readonly on: Day | null; readonly decidedBy: string }) | null;
  /** Numbers that were somebody else's, until somebody was reached. */
  readonly wrong: readonly (RestsOn & { readonly number: string | null })[];
  /** Those that are over, in order. */
  readonly rounds: readonly Round[];
};

export const nothingTried: CallLog = { tries: [], reached: null, again: null, wrong: [], rounds: [] };

/** At one minute of the clock; what has no clock time is at none. */
export const sameTime = (a: At, b: At): boolean =>
  a.time !== null && a.time === b.time && a.when.earliest === b.when.earliest;

/** Somebody was reached: what was tried before is over. What was tried at that very minute counts for nothing. */
function withReached(log: CallLog, reached: Reached, to: Callee): CallLog {
  const before = log.tries.filter((tried) => isAttempt(tried) && !sameTime(tried, reached)).length;
  const direct = isFirstRung(to);
  const round: Round = {
    on: dayOfTry(reached),
    how: direct ? "at an attempt" : "another way",
    attempts: before + (direct ? 1 : 0),
  };
  return { tries: [], reached, again: null, wrong: [], rounds: [...log.rounds, round] };
}

type Asked = At &
  Omit<Extract<Tried, { readonly by: "telephone" }>, "by" | keyof At> &
  Pick<Reached, "missed" | "whereabouts">;

/**
 * The log after a call. A try that reached nobody at the minute at which another reached somebody changes nothing, so that the order in which
 * the two were written down does not count.
 */
export function withCall(log: CallLog, { missed, whereabouts, ...call }: Asked): CallLog {
  const { outcome, eventId, recordedOn, when, time, number } = call;
  const reached = { eventId, recordedOn, when, time, missed, whereabouts };
  if (isReached(outcome)) return withReached(log, reached, call.to);
  if (log.reached !== null && sameTime(log.reached, call)) return log;
  const wrong = outcome === "wrong number" ? [...log.wrong, { eventId, recordedOn, number }] : log.wrong;
  return { ...log, wrong, tries: [...log.tries, { by: "telephone", ...call }] };
}

export const withLetter = (log: CallLog, letter: At & { readonly to: LetterTo }): CallLog => ({
  ...log,
  tries: [...log.tries, { by: "letter", ...letter }],
});

export const withDecided = (log: CallLog, again: NonNullable<CallLog["again"]>): CallLog => ({
  ...log,
  tries: [],
  again,
  rounds: [
    ...log.rounds,
    { on: again.recordedOn, how: "not reached", attempts: log.tries.filter(isAttempt).length },
  ],
});
