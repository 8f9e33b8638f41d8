import { type Evidence, flagOf } from "#shared/output/alarm/evidence.ts";
import { newCharacters } from "#shared/output/alarm/expected-fluid.ts";
import { isPinkSoonAfter } from "#shared/output/alarm/pink-urine.ts";
import type { AlarmReason } from "#shared/output/alarm/reason.ts";
import { firstOfRuns, ofReading, type Says } from "#shared/output/alarm/runs.ts";
import type { Reading } from "#shared/output/reading.ts";

/** A fluid that this tube is not expected to drain. Where nobody said what is expected of it, none is new. */
export function newFluidReasons(evidence: Evidence): AlarmReason[] {
  const { tube, rows, looked } = evidence;
  const row = rows.newFluid;
  if (row === null) return [];
  const seen = new Set(looked.flatMap(({ characters }) => characters));
  const news = newCharacters(tube.expectedFluid).filter((character) => seen.has(character));
  if (news.length === 0) return [];
  const isPink = isPinkSoonAfter(evidence);
  const by = { level: row.level, untilReached: flagOf(evidence, "new fluid")?.untilReached ?? null };
  return news.flatMap((character) => {
    const says = (reading: Reading): Says => {
      if (reading.characters.length === 0) return "nothing said";
      return reading.characters.includes(character) && !isPink(character, reading) ? "yes" : "no";
    };
    const args = { character, expected: tube.expectedFluid.join(", ") };
    return firstOfRuns(looked, says).map((reading) =>
      ofReading(evidence, reading, { ...by, source: row.source })({
        code: "new-fluid",
        args,
        of: character,
      }),
    );
  });
}
