import { clinicOf } from "#db/queries/clinic.ts";
import { roomsHistory } from "#db/queries/version-story.ts";
import type { Database } from "#db/sqlite.ts";
import { roomsIn } from "#server/rooms/rooms-of.ts";
import type { Instant } from "#shared/day/instant.ts";
import { type RoomsChange, roomsChanges } from "#shared/visit/rooms-change.ts";

type VersionLine = {
  readonly version: number;
  readonly at: Instant;
  /** Null where the rooms came with the clinic. */
  readonly who: string | null;
  /** How the version differs from the one before it. */
  readonly changes: readonly RoomsChange[];
};

/** Every version of the rooms, the newest on top: what it changed, when, and by whom. */
export function roomsStory(db: Database) {
  const versions = roomsHistory(db).map(
    ({ version, at, who }): VersionLine => ({
      version,
      at,
      who,
      changes: roomsChanges(roomsIn(db, version - 1), roomsIn(db, version)),
    }),
  );
  return { zone: clinicOf(db).zone, versions: versions.toReversed() };
}
