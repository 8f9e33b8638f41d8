import { clocksOf, reachedAnyTime } from "#shared/call/reach.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { CallingContext } from "#shared/record/call/calling-context.ts";
import { questionsInCall } from "#shared/record/call/questions-in-call.ts";
import { fold } from "#shared/tube/fold.ts";
import { formContext } from "#tests/factories/form-context.ts";
import { type Entry, placed } from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";

/** Fri 6 Nov 2026, 15:30 in London: a call about what the entries make, by the example's questions. */
export function callingContext(
  entries: readonly Entry[] = [placed()],
  drained: string | null = null,
): CallingContext {
  const patient = fold(history(...entries));
  const { today, now, zone } = formContext();
  const questions = questionsInCall({ protocol: exampleProtocol, patient, drained: () => drained });
  return {
    ...{ today, now, zone, questions },
    to: "the patient",
    number: "555 0117",
    interpreter: null,
    clocks: clocksOf(zone, reachedAnyTime),
    hours: { from: 9, to: 20 },
  };
}
