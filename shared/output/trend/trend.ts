import { median } from "#shared/output/median.ts";
import type { NetDay } from "#shared/output/net-day.ts";
import type { MlPer24h } from "#shared/output/rate.ts";
import { type CountableDays, countableDays } from "#shared/output/trend/countable-days.ts";
import { type FallShape, fallShape } from "#shared/output/trend/fall-shape.ts";
import { type HalfLife, halfLife } from "#shared/output/trend/half-life.ts";
import { type IfUnchanged, ifUnchanged, type LowRow } from "#shared/output/trend/if-unchanged.ts";
import { type MannKendall, mannKendall } from "#shared/output/trend/mann-kendall.ts";
import { type TheilSen, theilSen } from "#shared/output/trend/theil-sen.ts";

/** Every part rests on the days that `days` names as used, in mL/24 h, and holds what it was computed from. */
export type Trend =
  | { readonly kind: "no days"; readonly days: CountableDays }
  | {
      readonly kind: "told";
      readonly days: CountableDays;
      readonly median: MlPer24h;
      readonly line: TheilSen;
      readonly kendall: MannKendall;
      readonly halfLife: HalfLife;
      readonly fall: FallShape;
      readonly ifUnchanged: IfUnchanged;
    };

/**
 * What stands behind the figures of one tube, from its net days. It explains; nothing here raises an alarm or meets a criterion.
 * `row` is null where no row asks for low output.
 */
export function trendOf(netDays: readonly NetDay[], row: LowRow | null): Trend {
  const days = countableDays(netDays);
  const rates = days.used.map(({ mlPer24h }) => mlPer24h);
  const middle = median(rates);
  if (middle === undefined) return { kind: "no days", days };
  const line = theilSen(days.used.map(({ index, mlPer24h }) => ({ x: index, y: mlPer24h })));
  return {
    kind: "told",
    days,
    median: middle,
    line,
    kendall: mannKendall(rates),
    halfLife: halfLife(days.used),
    fall: fallShape(days.used),
    ifUnchanged: ifUnchanged(days, line, row),
  };
}
