import type { Day } from "#shared/day/day.ts";
import type { Instant } from "#shared/day/instant.ts";
import { millilitres } from "#shared/output/microlitre.ts";
import { type Measured, outputOfTube, placedAt } from "#shared/output/output-of-tube.ts";
import type { PlausibilityRow } from "#shared/output/plausible.ts";
import { HOUR_MS, type MlPer24h, ratePer24h } from "#shared/output/rate.ts";
import type { Reading } from "#shared/output/reading.ts";
import type { OutputRows } from "#shared/protocol/output-rows.ts";
import { tubeInForm } from "#shared/record/tube-in-form.ts";
import { known } from "#shared/tube/certainty.ts";
import type { OutputGroup } from "#shared/tube/kind/define.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** The stretch of time that one reading speaks of. */
export type Stretch = Pick<Reading, "from" | "to">;

/** What of a tube's record and log says whether a reading of it may be a slip. Plain JSON: a page hands it to its form. */
export type ReadingBeside = {
  /** Which rows of output measure it, and so what else is asked of a reading. */
  readonly group: OutputGroup | null;
  /** The first and the last day on which it may have lain there; null where unknown, or still in. */
  readonly inSince: Day | null;
  readonly outBy: Day | null;
  /** Where the first "since the last emptying" begins; null where its clock time is unknown. */
  readonly placedAt: Instant | null;
  /** What is ordered, in the words of the order; null where none is known. */
  readonly flushOrder: string | null;
  readonly emptied: readonly (Stretch & { readonly aspirate: boolean })[];
  /** Net rates of the days that can be told, in order. */
  readonly days: readonly { readonly day: Day; readonly mlPer24h: MlPer24h }[];
  /** Null: the clinic's protocol has no such row, and nothing is asked by it. */
  readonly plausible: PlausibilityRow | null;
};

/** As many as a form needs to ask its questions; a page hands no more of a long log to the browser. */
const LATEST = 120;

/** Day on which it left, as late as it may have been. */
const outBy = ({ ending, dislodged }: TubeState): Day | null =>
  ending?.when.latest ?? (dislodged === null || dislodged.part ? null : dislodged.when.latest);

/** What a reading of this tube is typed beside. `readings` are those that stand, without one that is being corrected. */
export function readingBeside(
  tube: TubeState,
  measured: Measured,
  row: OutputRows["plausibility"],
): ReadingBeside {
  const days = outputOfTube(tube, measured).days.flatMap(({ day, net }) =>
    net.kind === "known" ? [{ day, mlPer24h: net.mlPer24h }] : [],
  );
  return {
    group: kindOf(tube.kind).output,
    inSince: tubeInForm(tube).inSince,
    outBy: outBy(tube),
    placedAt: placedAt(tube, measured.zone),
    flushOrder: known(tube.flushOrder) ?? kindOf(tube.kind).flush?.order ?? null,
    emptied: measured.readings
      .map(({ from, to, procedureAspirate: aspirate }) => ({ from, to, aspirate }))
      .toSorted((a, b) => a.to - b.to)
      .slice(-LATEST),
    days: days.slice(-LATEST),
    plausible: row && {
      overMlPer24h: ratePer24h(millilitres(row.overMlPer24h), 24 * HOUR_MS),
      overTimesMedian: row.overTimesMedian,
      andMoreMl: row.andMoreMl,
    },
  };
}
