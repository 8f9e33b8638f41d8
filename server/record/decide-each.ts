import { clinicOf } from "#db/queries/clinic.ts";
import { readingsOfTube } from "#db/queries/readings.ts";
import { newestVersions } from "#db/queries/versions.ts";
import type { Database } from "#db/sqlite.ts";
import { standingOf } from "#server/output/standing-readings.ts";
import { type PatientRecord, streamOf } from "#server/record/load-record.ts";
import { clockText, dayAt, type Instant } from "#shared/day/instant.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import { type Command, decide, type Now } from "#shared/tube/decide.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { fold } from "#shared/tube/fold.ts";
import { withJoined } from "#shared/tube/join.ts";

type Streams = Pick<PatientRecord, "own" | "events">;

/** What commands make of a record: its entries with theirs, and theirs alone; or why they make nothing. */
export type Decided =
  | ({ readonly ok: true; readonly added: readonly TubeEvent[] } & Streams)
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** The clinic's moment at an instant, with the newest tables. */
export function clinicNow(db: Database, at: Instant): Now {
  const { zone } = clinicOf(db);
  return { today: dayAt(at, zone), time: clockText(at, zone), pins: newestVersions(db) };
}

/** Decides commands of one patient one after the other, each on what the ones before it made. Writes nothing. */
export function decideEach(
  db: Database,
  record: Streams,
  { commands, now }: { readonly commands: readonly Command[]; readonly now: Now },
): Decided {
  let { own, events } = record;
  const added: TubeEvent[] = [];
  for (const command of commands) {
    const decision = decide(events, command, now);
    if (!decision.ok) return decision;
    own = [...own, ...decision.events];
    events = withJoined(own, (from) => streamOf(db, from));
    added.push(...decision.events);
  }
  const takesBack = commands.some(({ amends }) => amends !== null);
  const lost = takesBack ? readingsLost(db, record.events, events) : null;
  return lost === null ? { ok: true, own, events, added } : { ok: false, refusals: [lost] };
}

/** What a tube drained must not drop out of sight with the entry that opened its record. */
function readingsLost(
  db: Database,
  before: readonly TubeEvent[],
  after: readonly TubeEvent[],
): Refusal | null {
  const stays = new Set(fold(after).tubes.map(({ id }) => id));
  const gone = fold(before).tubes.filter(({ id }) => !stays.has(id));
  const count = gone.reduce((sum, { id }) => sum + standingOf(readingsOfTube(db, id)).length, 0);
  return count === 0 ? null : { code: "rests-on-readings", args: { count } };
}
