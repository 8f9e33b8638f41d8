import type { Database } from "#db/sqlite.ts";
import { queueOrder } from "#server/review/queue-order.ts";

/** Where a tube stands in the physician's queue, each tube once: `at` counts from 1, 0 is not in it. Outside of it the first comes after. */
export function placeInQueue(db: Database, tubeId: string) {
  const tubes = [...new Set(queueOrder(db).flatMap(({ tubeId: id }) => id ?? []))];
  const at = tubes.indexOf(tubeId) + 1;
  return { at, of: tubes.length, before: tubes[at - 2] ?? null, after: tubes[at] ?? null };
}
