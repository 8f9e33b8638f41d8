import { dayAt } from "#shared/day/instant.ts";
import type { Evidence } from "#shared/output/alarm/evidence.ts";
import type { AlarmArgs, AlarmCode, AlarmReason } from "#shared/output/alarm/reason.ts";
import type { Reading } from "#shared/output/reading.ts";
import type { Level } from "#shared/protocol/levels.ts";

/** By the time at which it was emptied, then by id: the order of entry changes nothing. */
export const byEmptying = (a: Reading, b: Reading): number => a.to - b.to || (a.id < b.id ? -1 : 1);

/** What a reading says of something: that it was there, that it was not, or nothing. */
export type Says = "yes" | "no" | "nothing said";

/**
 * The first reading of each run that says so, of readings in the order of emptying. One that says no ends the run, one that says nothing does neither: seen once and
 * answered, it is not new again until it was gone.
 */
export function firstOfRuns(
  readings: readonly Reading[],
  says: (reading: Reading) => Says,
): readonly Reading[] {
  let running = false;
  const first: Reading[] = [];
  for (const reading of readings) {
    const said = says(reading);
    if (said === "yes" && !running) first.push(reading);
    running = said === "yes" || (running && said === "nothing said");
  }
  return first;
}

/** How soon, what holds until then, and by which row. */
type ByRow = { readonly level: Level | null; readonly untilReached: string | null; readonly source: string };

type Seen = { readonly code: AlarmCode; readonly args: AlarmArgs; readonly of?: string };

/** A reason of one reading. `of`: which of several that one reading can be a reason of. */
export function ofReading({ zone }: Pick<Evidence, "zone">, reading: Reading, row: ByRow) {
  return ({ code, args, of }: Seen): AlarmReason => ({
    key: [code, ...(of === undefined ? [] : [of]), reading.id].join(":"),
    code,
    level: row.level,
    untilReached: row.untilReached,
    on: dayAt(reading.to, zone),
    at: reading.to,
    readings: [reading.id],
    args,
    source: row.source,
  });
}
