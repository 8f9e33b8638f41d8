import { newestRoomsVersion, roomsRow } from "#db/queries/versions.ts";
import type { Database } from "#db/sqlite.ts";
import type { Room } from "#shared/visit/room.ts";
import { roomsSchema } from "#shared/visit/room-schema.ts";

/** Versions are never edited, so each is read and checked once for each open database. */
const shelves = new WeakMap<Database["sqlite"], Map<number, readonly Room[]>>();

/** The rooms of one version, in the clinic's own order; of version 0, which is before the first, none. Throws when there is no such version. */
export function roomsIn(db: Database, version: number): readonly Room[] {
  if (version === 0) return [];
  const shelf = shelves.get(db.sqlite) ?? new Map<number, readonly Room[]>();
  shelves.set(db.sqlite, shelf);
  const known = shelf.get(version);
  if (known !== undefined) return known;
  const row = roomsRow(db, version);
  if (row === undefined) throw new Error(`no rooms version ${version}`);
  const { rooms } = roomsSchema.parse(row.content);
  shelf.set(version, rooms);
  return rooms;
}

export type RoomsNow = {
  /** 0 where the clinic never had a room. */
  readonly version: number;
  readonly rooms: readonly Room[];
};

/** The rooms that the clinic has now. */
export function roomsOf(db: Database): RoomsNow {
  const version = newestRoomsVersion(db);
  return { version, rooms: roomsIn(db, version) };
}
