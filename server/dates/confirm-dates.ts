import { clinicOf } from "#db/queries/clinic.ts";
import { openProposals, openProposalsOf, type ProposalRow, settleProposals } from "#db/queries/proposals.ts";
import type { Tx } from "#db/transaction.ts";
import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import { append } from "#server/record/append.ts";
import type { Doing } from "#server/record/record-event.ts";
import { dayAt, type Instant } from "#shared/day/instant.ts";
import { onDay } from "#shared/day/when.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Confirming, ConfirmingSeveral } from "#shared/record/act.ts";

type By = { readonly actId: string; readonly staffId: string; readonly at: Instant };
type OfPatient = {
  readonly patientId: string;
  readonly lastSeen: number;
  readonly rows: readonly ProposalRow[];
};

/** One event a tube with the newest pins, from which its dates are computed from now on; what it confirmed is kept with it. */
function letStand(tx: Tx, { patientId, lastSeen, rows }: OfPatient, by: By): void {
  const tubes = [...new Set(rows.map(({ tubeId }) => tubeId))];
  const events = tubes.map((tubeId) => ({ tubeId, eventId: newId() }));
  const when = onDay(dayAt(by.at, clinicOf(tx).zone));
  append(
    tx,
    { patientId, ...by },
    events.map(({ tubeId, eventId }) => ({
      eventId,
      kind: "dates confirmed",
      tubes: [tubeId],
      when,
      time: null,
      daySequence: 0,
      payload: { note: null },
      amends: null,
      lastSeen,
    })),
  );
  for (const { tubeId, eventId } of events)
    settleProposals(
      tx,
      rows.filter((row) => row.tubeId === tubeId),
      eventId,
    );
}

/** Confirms what was proposed for a tube. Throws `nothing-proposed`. */
export function confirmDates({ db, staff }: Doing, input: Confirming): { settled: number } {
  const { actId, patientId, tubeId, lastSeen } = input;
  return inAct({ db, staff, actId, command: "record: dates confirmed", input }, (tx, at) => {
    const rows = openProposals(tx, tubeId);
    if (rows.length === 0) throw new DomainError({ code: "nothing-proposed" });
    letStand(tx, { patientId, lastSeen, rows }, { actId, staffId: staff.id, at });
    return { settled: rows.length };
  });
}

/**
 * Confirms proposals of several tubes in one act; all that is proposed of a tube stands together. Throws `proposals-changed` where one of
 * them is no longer proposed as it was seen; nothing is confirmed then.
 */
export function confirmSeveral({ db, staff }: Doing, input: ConfirmingSeveral): { tubes: number } {
  const { actId, proposals } = input;
  return inAct({ db, staff, actId, command: "record: dates confirmed", input }, (tx, at) => {
    const seen = openProposalsOf(tx, proposals);
    const gone = new Set(proposals).size - seen.length;
    if (gone > 0) throw new DomainError({ code: "proposals-changed", args: { count: gone } });
    const tubes = new Set(seen.map(({ tubeId }) => tubeId));
    const rows = [...tubes].flatMap((tubeId) => openProposals(tx, tubeId));
    const by = { actId, staffId: staff.id, at };
    for (const patientId of new Set(rows.map((row) => row.patientId))) {
      const own = rows.filter((row) => row.patientId === patientId);
      letStand(tx, { patientId, lastSeen: Number.MAX_SAFE_INTEGER, rows: own }, by);
    }
    return { tubes: tubes.size };
  });
}
