import type { ReactNode } from "react";

/** The rooms, as a page that changes them names them. */
export const roomsBook = { href: "/rooms", word: "All rooms", asks: "rooms.change" } as const;

/** Said where an address names a room that stands no longer. */
export function NoLongerThere(): ReactNode {
  return (
    <p>
      The clinic no longer has this room. <a href="/rooms">To the rooms</a>
    </p>
  );
}
