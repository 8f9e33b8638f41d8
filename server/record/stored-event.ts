import type { EventRow, StoredEvent } from "#db/queries/events.ts";
import { clockText, dayAt, type Instant, instantAt, type Zone } from "#shared/day/instant.ts";
import type { When } from "#shared/day/when.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { lift, payloadVersion } from "#shared/tube/lift.ts";
import type { EventKind } from "#shared/tube/payloads.ts";

/** What an event carries beside the facts: who recorded it, when, in which act. */
export type Recorded = {
  readonly patientId: string;
  readonly actId: string;
  readonly recordedAt: Instant;
  readonly recordedBy: string;
  readonly zone: Zone;
};

/** A stored row as an event of the trade, its payload lifted to the newest version. */
export function toEvent({ row, tubes }: StoredEvent, clinicZone: Zone): TubeEvent {
  const lifted = lift(row.kind as EventKind, row.payloadVersion, row.payload);
  if (!lifted.ok) throw new DomainError(lifted.refusal);
  const { id, seq, kind, daySequence, amends, precision, occurredEarliest, occurredLatest } = row;
  const when = { precision, earliest: occurredEarliest, latest: occurredLatest } as When;
  const time = row.occurredAt === null ? null : clockText(row.occurredAt, row.zone);
  const pins =
    row.pinsProtocol === null || row.pinsCalendar === null
      ? null
      : { protocol: row.pinsProtocol, calendar: row.pinsCalendar };
  const recordedOn = dayAt(row.recordedAt, clinicZone);
  const event = {
    id,
    seq,
    kind,
    when,
    time,
    daySequence,
    recordedOn,
    tubes,
    pins,
    amends,
    payload: lifted.value,
  };
  return event as TubeEvent;
}

/** The instant of an event whose clock time is known. Refuses an hour that clocks skip. */
function occurredAt(event: TubeEvent, zone: Zone): Instant | null {
  if (event.time === null || event.when.earliest === null) return null;
  const at = instantAt(event.when.earliest, event.time, zone);
  if (!at.ok) throw new DomainError({ ...at.refusal, field: "time" });
  return at.value;
}

export function toStored(event: TubeEvent, recorded: Recorded): StoredEvent {
  const row: EventRow = {
    id: event.id,
    patientId: recorded.patientId,
    seq: event.seq,
    actId: recorded.actId,
    kind: event.kind,
    payloadVersion: payloadVersion(event.kind),
    payload: event.payload,
    precision: event.when.precision,
    occurredEarliest: event.when.earliest,
    occurredLatest: event.when.latest,
    occurredAt: occurredAt(event, recorded.zone),
    zone: recorded.zone,
    daySequence: event.daySequence,
    recordedAt: recorded.recordedAt,
    recordedBy: recorded.recordedBy,
    amends: event.amends,
    pinsProtocol: event.pins?.protocol ?? null,
    pinsCalendar: event.pins?.calendar ?? null,
  };
  return { row, tubes: event.tubes };
}
