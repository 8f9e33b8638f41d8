import { DomainError } from "#shared/errors/refusal.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { entryOf } from "#shared/record/form.ts";
import { roomForm } from "#shared/record/rooms/room-form.ts";
import type { Room } from "#shared/visit/room.ts";

/** One change of the clinic's rooms, as it is typed or pressed. */
export type RoomsAsked =
  | { readonly kind: "add"; readonly texts: Texts }
  | { readonly kind: "change"; readonly roomId: string; readonly texts: Texts }
  | { readonly kind: "take away"; readonly roomId: string };

type Beside = {
  readonly rooms: readonly Room[];
  /** Of the room that is added; drawn by the server. */
  readonly newRoomId: string;
};

/** Throws `rooms-changed`: the page that named it is old. */
function roomOf(rooms: readonly Room[], roomId: string): Room {
  const room = rooms.find(({ id }) => id === roomId);
  if (room === undefined) throw new DomainError({ code: "rooms-changed" });
  return room;
}

/** The rooms as they would be: a new one comes last, a changed one keeps its place. Throws what to mend, each beside its field. */
export function roomsAsked(asked: RoomsAsked, { rooms, newRoomId }: Beside): readonly Room[] {
  if (asked.kind === "add")
    return [...rooms, { id: newRoomId, ...entryOf(roomForm.read(asked.texts, { rooms, changes: null })) }];
  const changes = roomOf(rooms, asked.roomId);
  if (asked.kind === "take away") return rooms.filter((room) => room !== changes);
  const changed = { id: changes.id, ...entryOf(roomForm.read(asked.texts, { rooms, changes })) };
  return rooms.map((room) => (room === changes ? changed : room));
}
