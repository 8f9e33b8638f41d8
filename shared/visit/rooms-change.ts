import type { Room } from "#shared/visit/room.ts";

/** How the rooms of two versions differ, one room a line. A room is the same one by its id. */
export type RoomsChange =
  | { readonly code: "added" | "taken away"; readonly room: Room }
  | { readonly code: "changed"; readonly from: Room; readonly to: Room };

/** A room as it is compared: the order in which hours and abilities are kept says nothing. */
const keyOf = ({ id, name, can, hours, reserve }: Room): string =>
  JSON.stringify([
    id,
    name,
    can.toSorted(),
    hours
      .map(({ weekday, from, to }) => [weekday, from, to].map((part) => String(part).padStart(4)).join())
      .toSorted(),
    reserve,
  ]);

/** What differs from some rooms to others: what was taken away first, then what was changed, then what was added. */
export function roomsChanges(before: readonly Room[], after: readonly Room[]): readonly RoomsChange[] {
  const was = new Map(before.map((room) => [room.id, room]));
  const is = new Map(after.map((room) => [room.id, room]));
  const changed = after.flatMap((to) => {
    const from = was.get(to.id);
    return from === undefined || keyOf(from) === keyOf(to) ? [] : [{ code: "changed" as const, from, to }];
  });
  return [
    ...before.flatMap((room) => (is.has(room.id) ? [] : [{ code: "taken away" as const, room }])),
    ...changed,
    ...after.flatMap((room) => (was.has(room.id) ? [] : [{ code: "added" as const, room }])),
  ];
}
