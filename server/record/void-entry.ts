import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import { append } from "#server/record/append.ts";
import type { Doing, RecordedAct } from "#server/record/record-event.ts";
import { whenUnknown } from "#shared/day/when.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Amending } from "#shared/record/act.ts";
import { voidForm } from "#shared/record/amend/void-form.ts";

/** Takes one entry out of what counts, with its reason; it stays in the story. */
export function voidEntry({ db, staff }: Doing, input: Amending): RecordedAct {
  const { actId, patientId, eventId: amends, lastSeen, texts } = input;
  return inAct({ db, staff, actId, command: "record: voided", input }, (tx, at) => {
    const read = voidForm.read(texts);
    if (!read.ok) throw new DomainError(read.refusals);
    const plain = { tubes: [], when: whenUnknown, time: null, daySequence: 0 };
    const command = {
      ...plain,
      eventId: newId(),
      kind: "voided",
      payload: read.entry,
      amends,
      lastSeen,
    } as const;
    const events = append(tx, { patientId, actId, staffId: staff.id, at }, [command]);
    return { actId, patientId, tubeId: null, eventIds: events.map(({ id }) => id), typed: texts };
  });
}
