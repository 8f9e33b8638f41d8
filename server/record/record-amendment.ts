import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import { append } from "#server/record/append.ts";
import { entryContext } from "#server/record/entry-context.ts";
import type { Doing, RecordedAct } from "#server/record/record-event.ts";
import { withWhatWasSeen } from "#server/record/with-what-was-seen.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Amending } from "#shared/record/act.ts";
import { readAmendment } from "#shared/record/amend/read-amendment.ts";
import type { Entry } from "#shared/record/form.ts";

/** Puts what an entry should have said in its place, with the reason; the first text stays in the story. */
export function recordAmendment({ db, staff }: Doing, input: Amending): RecordedAct {
  const { actId, patientId, eventId: amends, lastSeen, texts } = input;
  return inAct({ db, staff, actId, command: "record: amended", input }, (tx, at) => {
    const { kind, context, event } = entryContext(tx, at, { patientId, eventId: amends });
    const read = readAmendment(kind, texts, context);
    if (!read.ok) throw new DomainError(read.refusals);
    const tubeId = event.tubes.at(-1) ?? null;
    const { reason, when, time } = read.entry;
    const { payload } = withWhatWasSeen(tx, { kind, when, time, payload: read.entry.payload } as Entry, {
      tubeId,
      amends: event,
    });
    const command = {
      eventId: newId(),
      kind: "amended",
      tubes: [],
      when,
      time,
      daySequence: event.daySequence,
      payload: { reason, when, time, payload },
      amends,
      lastSeen,
    } as const;
    const events = append(tx, { patientId, actId, staffId: staff.id, at }, [command]);
    return {
      actId,
      patientId,
      tubeId,
      eventIds: events.map(({ id }) => id),
      typed: texts,
    };
  });
}
