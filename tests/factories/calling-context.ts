import { openedBy, questionsOf } from "#shared/call/questions.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { CallingContext } from "#shared/record/call/calling-context.ts";
import { fold } from "#shared/tube/fold.ts";
import { numberedTitle } from "#shared/tube/name.ts";
import { formContext } from "#tests/factories/form-context.ts";
import { type Entry, history, placed } from "#tests/support/factories.ts";

/** Fri 6 Nov 2026, 15:30 in London: a call about what the entries make, by the example's questions. */
export function callingContext(
  entries: readonly Entry[] = [placed()],
  drained: string | null = null,
): CallingContext {
  const patient = fold(history(...entries));
  const { today, now, zone } = formContext();
  const questions = questionsOf(exampleProtocol.calls?.questions ?? [], patient).map((asked) => {
    const { row, tube } = asked;
    const { id, asks, opensOn, thenRecord } = row;
    const ofTube = tube === null ? null : { id: tube.id, number: tube.number, title: numberedTitle(tube) };
    return {
      ...{ id, asks, opensOn, thenRecord, tube: ofTube },
      drained: thenRecord === "output" ? drained : null,
      ...openedBy(asked, patient, exampleProtocol),
    };
  });
  const hours = { from: 9, to: 20 };
  return { today, now, zone, questions, to: "the patient", number: "555 0117", interpreter: null, hours };
}
