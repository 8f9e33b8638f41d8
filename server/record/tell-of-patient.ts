import type { Tx } from "#db/transaction.ts";
import { newId } from "#server/ids.ts";
import { append, type Recording } from "#server/record/append.ts";
import { clinicNow } from "#server/record/decide-each.ts";
import type { Doing } from "#server/record/record-event.ts";
import type { Instant } from "#shared/day/instant.ts";
import type { WhenAt } from "#shared/day/read-when-at.ts";
import { onDay } from "#shared/day/when.ts";
import type { EventKind, Payload } from "#shared/tube/payloads.ts";

/** Something that an act says of a patient, as an entry: now, where it does not say when. */
export type Telling<K extends EventKind = EventKind> = {
  readonly [Kind in K]: { readonly kind: Kind; readonly payload: Payload<Kind> };
}[K] & {
  readonly id?: string;
  readonly at?: Pick<WhenAt, "when" | "time">;
  /** The tubes that it is about; left out where it is about the patient. */
  readonly tubes?: readonly string[];
};

export type Teller = {
  readonly actId: string;
  readonly patientId: string;
  readonly lastSeen: number;
  readonly staff: Doing["staff"];
  readonly at: Instant;
} & Pick<Recording, "loaded">;

/**
 * Records what one act says of one patient, entry after entry, each decided on what the ones before it made. Returns their ids. Throws
 * DomainError with every refusal; nothing is written then.
 */
export function tellOfPatient(tx: Tx, says: readonly Telling[], by: Teller): readonly string[] {
  const { actId, patientId, lastSeen, staff, at, loaded } = by;
  const now = clinicNow(tx, at);
  const commands = says.map(({ kind, payload, id, at: told, tubes }) => ({
    eventId: id ?? newId(),
    kind,
    tubes: tubes ?? [],
    when: told?.when ?? onDay(now.today),
    time: told === undefined ? now.time : told.time,
    daySequence: 0,
    payload,
    amends: null,
    lastSeen,
  }));
  append(tx, { patientId, actId, staffId: staff.id, at, loaded }, commands);
  return commands.map(({ eventId }) => eventId);
}
