import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { Minute } from "#shared/visit/room.ts";
import type { VisitState } from "#shared/visit/visit.ts";
import { printMinute } from "#shared/words/offers.ts";

/** A visit as one line of a list says it. `where` is null of one in a room of the clinic. */
export type VisitInShort = {
  readonly state: VisitState;
  readonly on: Day;
  readonly from: Minute | null;
  readonly where: string | null;
};

/** "Wed 11 Nov 2026, 09:30"; without a time where nobody said one. */
export const visitTime = ({ on, from }: Pick<VisitInShort, "on" | "from">): string =>
  from === null ? printDay(on) : `${printDay(on)}, ${printMinute(from)}`;

/** "booked Wed 11 Nov 2026, 09:30", "booked elsewhere Sat 14 Nov 2026, Far Dale General". */
export function visitInShort(visit: VisitInShort): string {
  const { state, where } = visit;
  const elsewhere = where === null ? state : `${state} elsewhere`;
  const said = `${elsewhere} ${visitTime(visit)}${where === null ? "" : `, ${where}`}`;
  return state === "proposed" ? `${said}, not answered yet` : said;
}
