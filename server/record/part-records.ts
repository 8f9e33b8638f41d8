import { addPatientChange, patientById, updatePatient } from "#db/queries/patients.ts";
import type { Tx } from "#db/transaction.ts";
import { newId } from "#server/ids.ts";
import { type PatientRecord, streamOf } from "#server/record/load-record.ts";
import type { Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { following, type Join, joinsIn, restsOnJoin } from "#shared/tube/join.ts";

type By = { readonly actId: string; readonly at: Instant };

/** Says of a patient which record goes on with theirs, or that their own does again; what stood is kept. */
export function setJoined(
  tx: Tx,
  { patientId, joinedInto }: { readonly patientId: string; readonly joinedInto: string | null },
  { actId, at }: By,
): void {
  const row = patientById(tx, patientId);
  if (row === undefined) throw new DomainError({ code: "patient-unknown" });
  updatePatient(tx, { ...row, joinedInto, updatedAt: at });
  const change = { before: { joinedInto: row.joinedInto }, after: { joinedInto } };
  addPatientChange(tx, { id: newId(), patientId, actId, ...change, at });
}

const missing = (from: readonly Join[], of: readonly Join[]): readonly Join[] =>
  from.filter(({ id }) => !of.some((other) => other.id === id));

/**
 * Parts the records whose joining was just undone. Refuses where something that was recorded since rests on it (`rests-on-join`),
 * and to bring back a joining by undoing its undo, since both records may have gone on (`join-anew`). Returns whose records are
 * their own again; their projections are to be written after the one of the record that they leave.
 */
export function partRecords(
  tx: Tx,
  before: PatientRecord,
  { own, ...by }: By & { readonly own: readonly TubeEvent[] },
): readonly string[] {
  const stood = joinsIn(before.own);
  const stand = joinsIn(own);
  if (missing(stand, stood).length > 0) throw new DomainError({ code: "join-anew" });
  return missing(stood, stand).map((join) => {
    const { from, offset } = join.payload;
    const rests = restsOnJoin(own, following(streamOf(tx, from), offset), join);
    if (rests.length > 0)
      throw new DomainError({ code: "rests-on-join", args: { entries: [...new Set(rests)].join(", ") } });
    setJoined(tx, { patientId: from, joinedInto: null }, by);
    return from;
  });
}
