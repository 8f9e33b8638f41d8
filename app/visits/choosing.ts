import type { Query } from "#app/lists/filter-address.ts";
import { bookingHref, visitHref } from "#app/visit/visit-pages.ts";
import type { Day } from "#shared/day/day.ts";
import type { Minute } from "#shared/visit/room.ts";
import { printMinute } from "#shared/words/offers.ts";

/** For whom a free time is looked for: a visit that is moved, or one that is to be booked. Ids alone, as addresses hold them. */
export type Choosing =
  | { readonly kind: "moves"; readonly patientId: string; readonly visitId: string }
  | { readonly kind: "for"; readonly patientId: string; readonly tubes: string };

const MOVES = /^([\w-]{1,64})\/([\w-]{1,64})$/;
const FOR = /^[\w-]{1,64}$/;
const TUBES = /^[\w:,-]{1,1500}$/;

const word = (query: Query, name: string): string => [query[name] ?? []].flat()[0] ?? "";

/** Null where the address speaks of nobody, or in no way that is understood: free times then lead to the search. */
export function choosingIn(query: Query): Choosing | null {
  const [, patientId, visitId] = MOVES.exec(word(query, "moves")) ?? [];
  if (patientId !== undefined && visitId !== undefined) return { kind: "moves", patientId, visitId };
  const [whose, tubes] = [word(query, "for"), word(query, "tubes")];
  return FOR.test(whose) && TUBES.test(tubes) ? { kind: "for", patientId: whose, tubes } : null;
}

/** The same in an address of these pages. */
export function choosingQuery(choosing: Choosing | null): Readonly<Record<string, string>> {
  if (choosing === null) return {};
  return choosing.kind === "moves"
    ? { moves: `${choosing.patientId}/${choosing.visitId}` }
    : { for: choosing.patientId, tubes: choosing.tubes };
}

type FreeTime = { readonly on: Day; readonly from: Minute; readonly room: string };

/** Where a free time leads: to the page that books or moves, which checks it again, or to the search. */
export function freeTimeHref({ on, from, room }: FreeTime, choosing: Choosing | null): string {
  const slot = { on, at: printMinute(from), room };
  const query = (more: Readonly<Record<string, string>> = {}): string =>
    new URLSearchParams({ ...more, ...slot }).toString();
  if (choosing === null) return `/patients?${query()}`;
  return choosing.kind === "moves"
    ? `${visitHref(choosing.patientId, choosing.visitId)}/move?${query()}`
    : `${bookingHref(choosing.patientId)}?${query({ tubes: choosing.tubes })}`;
}
