import { clinicOf } from "#db/queries/clinic.ts";
import type { Database } from "#db/sqlite.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { loadRecord, type PatientRecord } from "#server/record/load-record.ts";
import { dayAt, type Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { FlagContext, RaisingContext } from "#shared/record/call/flag-context.ts";
import { numberedTubes } from "#shared/record/numbered-tubes.ts";
import type { EventOf } from "#shared/tube/event.ts";
import { fold } from "#shared/tube/fold.ts";
import { type Standing, standingEvents } from "#shared/tube/history.ts";
import type { PatientTubes } from "#shared/tube/state.ts";

export const clockOf = (db: Database, at: Instant) => {
  const { zone } = clinicOf(db);
  return { today: dayAt(at, zone), now: at, zone };
};

/** What a red flag is raised beside: the rows of the newest table. Throws `no-pins` before the clinic has one. */
export function raisingContext(
  db: Database,
  at: Instant,
  { tubes }: Pick<PatientTubes, "tubes">,
): RaisingContext {
  const { redFlags } = viewProtocol(db).protocol;
  const rows = redFlags.map(({ id, level, says, untilReached }) => ({ id, level, says, untilReached }));
  return { ...clockOf(db, at), rows, tubes: numberedTubes(tubes) };
}

export type RaisedFlag = Omit<Standing, "event"> & { readonly event: EventOf<"red flag raised"> };

/** The entry that raised a red flag, as it stands. Throws `entry-unknown`: another patient's, or taken back. */
export function raisedIn({ events }: Pick<PatientRecord, "events">, flagId: string): RaisedFlag {
  for (const { event, ...standing } of standingEvents(events))
    if (event.id === flagId && event.kind === "red flag raised") return { ...standing, event };
  throw new DomainError({ code: "entry-unknown" });
}

/** What a red flag that is open is handed over or closed beside. Throws `flag-not-open`, `entry-unknown`. */
export function flagContext(
  db: Database,
  at: Instant,
  { patientId, flagId }: { readonly patientId: string; readonly flagId: string },
): FlagContext {
  const record = loadRecord(db, patientId);
  const { event, when } = raisedIn(record, flagId);
  if (!fold(record.events).redFlags.some(({ id }) => id === flagId))
    throw new DomainError({ code: "flag-not-open" });
  return { ...clockOf(db, at), told: { when, time: event.time } };
}
