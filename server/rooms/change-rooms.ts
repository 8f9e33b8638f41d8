import { ROOMS_COMMAND } from "#db/queries/version-story.ts";
import { addRoomsVersion } from "#db/queries/versions.ts";
import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import type { Doing } from "#server/record/record-event.ts";
import { roomsIn, roomsOf } from "#server/rooms/rooms-of.ts";
import { type LostSlot, lostSlots } from "#server/visits/lost-slots.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { roomsAsked } from "#shared/record/rooms/asked.ts";
import type { ChangingRooms, RestoringRooms } from "#shared/record/rooms/asked-schema.ts";
import type { Room } from "#shared/visit/room.ts";
import { type RoomsChange, roomsChanges } from "#shared/visit/rooms-change.ts";

type RoomsChanging = {
  readonly actId: string;
  /** The version that was seen. */
  readonly seen: number;
  /** What the act is kept as. */
  readonly input: unknown;
  /** The rooms that stand as they are to be from now on. Throws DomainError with what to mend. */
  readonly change: (rooms: readonly Room[]) => readonly Room[];
};

export type RoomsChanged = {
  /** The version that stands now; the one that was seen where nothing changed. */
  readonly version: number;
  readonly changed: boolean;
  readonly changes: readonly RoomsChange[];
  /** Booked visits that the change leaves where none can be booked any more. */
  readonly lost: readonly LostSlot[];
};

/**
 * Adds the next version of the rooms. A change that changes nothing writes no version; the same act sent again changes nothing more.
 * Throws `rooms-changed` where another version came meanwhile.
 */
function changeRooms({ db, staff }: Doing, { actId, seen, input, change }: RoomsChanging): RoomsChanged {
  return inAct({ db, staff, actId, command: ROOMS_COMMAND, input }, (tx, at) => {
    const stands = roomsOf(tx);
    if (stands.version !== seen) throw new DomainError({ code: "rooms-changed" });
    const rooms = change(stands.rooms);
    const changes = roomsChanges(stands.rooms, rooms);
    const lost = changes.length === 0 ? [] : lostSlots(tx, { rooms });
    const version = changes.length === 0 ? seen : seen + 1;
    if (version > seen) addRoomsVersion(tx, { version, content: { rooms }, createdAt: at });
    return { version, changed: changes.length > 0, changes, lost };
  });
}

/** What was typed or pressed. Throws every field to mend. */
export const askRooms = (doing: Doing, { actId, seen, asked }: ChangingRooms): RoomsChanged =>
  changeRooms(doing, {
    actId,
    seen,
    input: { seen, asked },
    change: (rooms) => roomsAsked(asked, { rooms, newRoomId: newId() }),
  });

/** The rooms of an earlier version stand again, as a version of their own. Throws `rooms-changed`. */
export const restoreRooms = (doing: Doing, { actId, seen, version }: RestoringRooms): RoomsChanged =>
  changeRooms(doing, {
    actId,
    seen,
    input: { seen, version },
    change: () => {
      if (version >= seen) throw new DomainError({ code: "rooms-changed" });
      return roomsIn(doing.db, version);
    },
  });
