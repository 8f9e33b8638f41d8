import { type Instant, latestOf } from "#shared/day/instant.ts";
import { type Evidence, flagOf } from "#shared/output/alarm/evidence.ts";
import type { AlarmReason } from "#shared/output/alarm/reason.ts";
import { firstOfRuns, ofReading, type Says } from "#shared/output/alarm/runs.ts";
import { HOUR_MS } from "#shared/output/rate.ts";
import type { Reading } from "#shared/output/reading.ts";
import { instantOf } from "#shared/output/segment-cuts.ts";
import { ruleOf } from "#shared/tube/event-kinds.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import { type Character, characters } from "#shared/tube/vocabulary.ts";

/** Of no other organ: thinner, clearer, or what settles in any fluid. */
const neverNew: readonly Character[] = ["serous", "clear", "debris"];
/** Blood from the lightest on: where one is expected, a lighter one is, and clots where blood is. */
const blood: readonly Character[] = ["serosanguineous", "bloody", "clots"];

function isExpected(character: Character, expected: readonly Character[]): boolean {
  if (neverNew.includes(character) || expected.includes(character)) return true;
  const heaviest = Math.max(...expected.map((one) => blood.indexOf(one)));
  if (heaviest < 0 || !blood.includes(character)) return false;
  return blood.indexOf(character) <= heaviest || expected.includes("bloody");
}

/** The last time that something was done through the tract. */
function lastProcedure({ tube, zone }: Evidence): Instant | null {
  const done = tube.story
    .filter(({ kind }) => ruleOf(kind).resets !== "neither" || kind === "repositioned")
    .map((line) => instantOf(line, zone))
    .filter((at) => at !== null);
  return done.length === 0 ? null : latestOf(...done);
}

/** Blood-tinged urine so soon after a procedure is no alarm: it is asked again the next day. */
export function isPinkSoonAfter(evidence: Evidence) {
  const { tube, rows } = evidence;
  const procedure = kindOf(tube.kind).output === "urine" ? lastProcedure(evidence) : null;
  const hours = rows.newFluid?.pinkUrineHours ?? 0;
  return (character: Character, { to }: Reading): boolean =>
    character === "serosanguineous" &&
    procedure !== null &&
    to >= procedure &&
    to - procedure < hours * HOUR_MS;
}

/** A fluid that this tube is not expected to drain. Where nobody said what is expected of it, none is new. */
export function newFluidReasons(evidence: Evidence): AlarmReason[] {
  const { tube, rows, intervals } = evidence;
  const row = rows.newFluid;
  if (row === null || tube.expectedFluid.length === 0) return [];
  const isPink = isPinkSoonAfter(evidence);
  const by = { level: row.level, untilReached: flagOf(evidence, "new fluid")?.untilReached ?? null };
  const news = characters.filter((character) => !isExpected(character, tube.expectedFluid));
  return news.flatMap((character) => {
    const says = (reading: Reading): Says => {
      if (reading.characters.length === 0) return "nothing said";
      return reading.characters.includes(character) && !isPink(character, reading) ? "yes" : "no";
    };
    const args = { character, expected: tube.expectedFluid.join(", ") };
    return firstOfRuns(intervals, says).map((reading) =>
      ofReading(evidence, reading, { ...by, source: row.source })({
        code: "new-fluid",
        args,
        of: character,
      }),
    );
  });
}
