import { clinicOf } from "#db/queries/clinic.ts";
import { openProposals, settleProposals } from "#db/queries/proposals.ts";
import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import { append } from "#server/record/append.ts";
import type { Doing } from "#server/record/record-event.ts";
import { dayAt } from "#shared/day/instant.ts";
import { onDay } from "#shared/day/when.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Confirming } from "#shared/record/act.ts";

/** Confirms what was proposed for a tube: an event with the newest pins, from which its dates are computed from now on. */
export function confirmDates({ db, staff }: Doing, input: Confirming): { settled: number } {
  const { actId, patientId, tubeId, lastSeen } = input;
  return inAct({ db, staff, actId, command: "record: dates confirmed", input }, (tx, at) => {
    const settled = openProposals(tx, tubeId).length;
    if (settled === 0) throw new DomainError({ code: "nothing-proposed" });
    const eventId = newId();
    append(tx, { patientId, actId, staffId: staff.id, at }, [
      {
        eventId,
        kind: "dates confirmed",
        tubes: [tubeId],
        when: onDay(dayAt(at, clinicOf(tx).zone)),
        time: null,
        daySequence: 0,
        payload: { note: null },
        amends: null,
        lastSeen,
      },
    ]);
    settleProposals(tx, tubeId, eventId);
    return { settled };
  });
}
