import { openedBy, questionsOf } from "#shared/call/questions.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { QuestionInCall } from "#shared/record/call/calling-context.ts";
import { numberedTitle, titlesOf } from "#shared/tube/name.ts";
import type { PatientTubes } from "#shared/tube/state.ts";

type Asked = {
  readonly protocol: Protocol;
  readonly patient: PatientTubes;
  /** What was lately told to have drained of a tube, in words; null where nothing was. */
  readonly drained: (tubeId: string) => string | null;
};

/** The clinic's questions as a call's form asks them of a patient, each with what its answer opens. */
export function questionsInCall({ protocol, patient, drained }: Asked): readonly QuestionInCall[] {
  const titles = titlesOf(patient.tubes);
  return questionsOf(protocol.calls?.questions ?? [], patient).map((asked) => {
    const { row, tube } = asked;
    const { id, asks, opensOn, thenRecord } = row;
    const titled =
      tube === null
        ? null
        : { id: tube.id, number: tube.number, title: titles.get(tube.id) ?? numberedTitle(tube) };
    return {
      id,
      asks,
      opensOn,
      thenRecord,
      tube: titled,
      ...openedBy(asked, patient, protocol),
      drained: tube === null || thenRecord !== "output" ? null : drained(tube.id),
    };
  });
}
