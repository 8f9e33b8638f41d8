import { type CallLog, withCall, withDecided, withLetter } from "#shared/call/call-log.ts";
import { isReached, type TryOutcome } from "#shared/call/outcomes.ts";
import type { DoneFlag, OpenFlag } from "#shared/call/red-flag.ts";
import { restsOn } from "#shared/tube/applied.ts";
import type { ContradictionCode } from "#shared/tube/contradiction-codes.ts";
import type { AnyEventOf, EventOf, TubeEvent } from "#shared/tube/event.ts";
import type { Standing } from "#shared/tube/history.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";
import type { CallOutcome } from "#shared/tube/vocabulary.ts";

export type CallEvent = AnyEventOf<"call attempted" | "letter sent" | "not reached decided">;
export type FlagEvent = AnyEventOf<"red flag raised" | "red flag handed" | "red flag done">;

const timed = (event: TubeEvent, { when }: Pick<Standing, "when">) => ({
  ...restsOn(event),
  when,
  time: event.time,
});

/** A call about one tube, as it was recorded before calls were about the patient. */
const asTry: Readonly<Record<CallOutcome, TryOutcome>> = {
  "reached the patient": "reached the patient",
  "reached a carer": "reached a carer",
  "not reached": "no answer",
};

/** What the patient has open that a call may be about. */
type Beside = Pick<PatientTubes, "visits" | "whereabouts">;

const cameUp = ({ visits, whereabouts }: Beside) => ({
  missed: visits.filter(({ state }) => state === "did not attend").map(({ id }) => id),
  whereabouts: whereabouts?.eventId ?? null,
});

/** What an entry about calling makes of what was tried before. */
export function notedOfCalls(
  log: CallLog,
  event: CallEvent | EventOf<"called">,
  beside: Beside & Pick<Standing, "when">,
): CallLog {
  const at = timed(event, beside);
  switch (event.kind) {
    case "called": {
      const outcome = asTry[event.payload.outcome];
      return withCall(log, {
        ...at,
        ...cameUp(beside),
        outcome,
        to: "the patient",
        number: null,
        back: null,
      });
    }
    case "call attempted": {
      const { to, outcome, number, back } = event.payload;
      return withCall(log, { ...at, ...cameUp(beside), to, outcome, number, back });
    }
    case "letter sent":
      return withLetter(log, { ...at, to: event.payload.to });
    case "not reached decided": {
      const { again, decidedBy } = event.payload;
      return withDecided(log, { ...restsOn(event), on: again, decidedBy });
    }
  }
}

/** What a call makes of a tube that it is about: how often it was tried, and the calls of a trial that runs. */
export function calledAbout(
  tube: TubeState,
  event: EventOf<"called"> | EventOf<"call attempted">,
  { when }: Pick<Standing, "when">,
): TubeState {
  const { outcome } = event.payload;
  const reached = outcome !== "not reached" && isReached(outcome);
  const attempts = (tube.called?.attempts ?? 0) + 1;
  const before = tube.called?.reached === true ? tube.called : null;
  const last = reached || before === null ? { eventId: event.id, when, time: event.time } : before;
  const trial = tube.trial === null || !reached ? tube.trial : { ...tube.trial, calls: tube.trial.calls + 1 };
  return { ...tube, trial, called: { ...last, reached: reached || before !== null, attempts } };
}

type Flags = Pick<PatientTubes, "redFlags" | "flagsDone">;

/** What an entry about red flags makes of those that are open. Total: what speaks of one that is not open is said. */
export function notedOfFlags(
  { redFlags, flagsDone }: Flags,
  event: FlagEvent,
  { when }: Pick<Standing, "when">,
): Flags & { readonly contradiction?: ContradictionCode } {
  const at = { when, time: event.time, recordedOn: event.recordedOn };
  if (event.kind === "red flag raised") {
    const { of, ...payload } = event.payload;
    const tubeId = of?.tube ?? null;
    const flag: OpenFlag = { ...at, ...payload, id: event.id, tubeId, handed: null, firstHanded: null };
    return { redFlags: [...redFlags, flag], flagsDone };
  }
  const { flag: id } = event.payload;
  const flag = redFlags.find((one) => one.id === id);
  if (flag === undefined) return { redFlags, flagsDone, contradiction: "flag-not-open" };
  if (event.kind === "red flag done") {
    const { level, firstHanded, when: raisedOn, time, recordedOn } = flag;
    const raised = { when: raisedOn, time, recordedOn };
    const over: DoneFlag = { id, level, raised, handed: firstHanded, done: at };
    return { redFlags: redFlags.filter((one) => one !== flag), flagsDone: [...flagsDone, over] };
  }
  const handed = { ...at, eventId: event.id, to: event.payload.to };
  const next = { ...flag, handed, firstHanded: flag.firstHanded ?? at };
  return { redFlags: redFlags.map((one) => (one === flag ? next : one)), flagsDone };
}
