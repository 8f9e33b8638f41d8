import type { EventRow } from "#db/queries/events.ts";
import { allStaff } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { type PatientRecord, storedBehind } from "#server/record/load-record.ts";
import type { Instant } from "#shared/day/instant.ts";
import { type When, whenUnknown } from "#shared/day/when.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { standingEvents } from "#shared/tube/history.ts";
import type { EventKind } from "#shared/tube/payloads.ts";

/** One entry as the story tells it: what stands, who recorded it, and what became of it. */
export type StoryEntry = {
  readonly eventId: string;
  readonly actId: string;
  readonly kind: EventKind;
  readonly tubes: readonly string[];
  readonly when: When;
  readonly time: string | null;
  readonly payload: unknown;
  readonly recordedAt: Instant;
  readonly recordedBy: string;
  readonly recordedById: string;
  /** An undone entry stays in the story, with its reason; one of another patient leaves nothing of what it said. */
  readonly standing: "stands" | "corrected" | "undone" | "wrong patient";
  readonly reason: string | null;
};

type Amending = Extract<TubeEvent, { kind: "amended" | "voided" }>;

const isAmending = (event: TubeEvent): event is Amending =>
  event.kind === "amended" || event.kind === "voided";

/** A patient's entries, newest first, each with what became of it. */
export function storyOf(
  db: Database,
  record: Pick<PatientRecord, "patient" | "own" | "events">,
): readonly StoryEntry[] {
  const { events } = record;
  const names = new Map(allStaff(db).map(({ id, fullName }) => [id, fullName]));
  const rows = new Map(storedBehind(db, record).map(({ row }) => [row.id, row]));
  const standing = new Map(standingEvents(events).map((entry) => [entry.event.id, entry]));
  const told = events
    .filter((event) => !isAmending(event))
    .flatMap((event): StoryEntry[] => {
      const row = rows.get(event.id);
      if (row === undefined) return [];
      const now = standing.get(event.id);
      const last = events.filter(isAmending).findLast(({ amends }) => amends === event.id);
      const { kind, tubes, id: eventId } = event;
      const misfiled = now === undefined && last?.kind === "voided" && last.payload.wrongPatient;
      if (misfiled) return [withoutWhatItSaid(event, row, names)];
      return [
        {
          eventId,
          actId: row.actId,
          kind,
          tubes,
          when: now?.when ?? event.when,
          time: now?.event.time ?? event.time,
          payload: now?.event.payload ?? event.payload,
          recordedAt: row.recordedAt,
          recordedBy: names.get(row.recordedBy) ?? "",
          recordedById: row.recordedBy,
          standing: now === undefined ? "undone" : now.amendedBy.length > 0 ? "corrected" : "stands",
          reason: now === undefined || now.amendedBy.length > 0 ? (last?.payload.reason ?? null) : null,
        },
      ];
    });
  return told.toReversed();
}

/** What is left of an entry that belongs to another patient: that there was one, and who recorded it when. */
const withoutWhatItSaid = (
  event: TubeEvent,
  row: EventRow,
  names: ReadonlyMap<string, string>,
): StoryEntry => ({
  eventId: event.id,
  actId: row.actId,
  kind: event.kind,
  tubes: [],
  when: whenUnknown,
  time: null,
  payload: null,
  recordedAt: row.recordedAt,
  recordedBy: names.get(row.recordedBy) ?? "",
  recordedById: row.recordedBy,
  standing: "wrong patient",
  reason: null,
});
