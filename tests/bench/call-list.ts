import { callOrder } from "#db/queries/call-lines.ts";
import type { Database } from "#db/sqlite.ts";
import { CALL_PAGE, callList, callNow } from "#server/calls/call-list.ts";
import type { Figure } from "#tests/bench/figure.ts";
import { byTurns, median } from "#tests/bench/sample.ts";

const TURNS = 200;

/** The first page of the call list, with why, tries and who has whom, against its order alone. */
export function callListFigure(db: Database, tubes: number): Figure {
  const at = callNow(db);
  const found = { ours: 0, floor: 0 };
  const times = byTurns(
    TURNS,
    () => {
      found.ours = callList(db, { which: "due", page: 1 }).lines.length;
    },
    () => {
      found.floor = callOrder(db, { ...at, limit: CALL_PAGE, skip: 0 }).length;
    },
  );
  if (found.ours !== CALL_PAGE || found.floor !== CALL_PAGE)
    throw new Error(`${CALL_PAGE} patients were asked for`);
  return {
    what: `call list, first page of ${tubes.toLocaleString("en-US")} tubes in place`,
    value: median(times.ours) * 1000,
    unit: "us",
    floor: { is: "its order alone, by the index", value: median(times.floor) * 1000 },
    aim: { kind: "at most", value: 50_000 },
  };
}
