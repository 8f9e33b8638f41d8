import { visitLineById } from "#db/queries/visits.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";
import type { Doing } from "#server/record/record-event.ts";
import { type Telling, tellOfPatient } from "#server/record/tell-of-patient.ts";
import type { Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Payload } from "#shared/tube/payloads.ts";
import type { visitPayloads } from "#shared/tube/visit-payloads.ts";
import type { Visit } from "#shared/visit/visit.ts";

/** What every act about a visit carries. */
export type VisitSubmit = {
  readonly actId: string;
  readonly patientId: string;
  /** Sequence of the last event of the patient that the page had seen. */
  readonly lastSeen: number;
};

/** What a visit's act answers: what to look at next, and what to undo. */
export type VisitRecorded = { readonly actId: string; readonly patientId: string; readonly visitId: string };

/** A visit of that patient, as it stands. Throws `visit-not-booked`. */
export function visitOf(db: Database, { patientId, visitId }: { patientId: string; visitId: string }): Visit {
  const line = visitLineById(db, visitId);
  if (line === undefined || line.visit.patientId !== patientId)
    throw new DomainError({ code: "visit-not-booked" });
  return line.visit.visit;
}

type VisitKind = keyof typeof visitPayloads;
type Says<K extends VisitKind> = { readonly kind: K; readonly payload: Payload<K> };

/** Records what an act says of a visit, now: at least one entry, all of one visit. An entry that books one is named by its own id. */
export function recordOfVisit<K extends VisitKind>(
  tx: Tx,
  says: readonly [Says<K>, ...Says<K>[]],
  by: VisitSubmit & { readonly staff: Doing["staff"]; readonly at: Instant },
): VisitRecorded {
  const [id = ""] = tellOfPatient(tx, says as unknown as readonly Telling[], by);
  const [{ payload }] = says;
  const { actId, patientId } = by;
  return { actId, patientId, visitId: "visit" in payload ? payload.visit : id };
}
