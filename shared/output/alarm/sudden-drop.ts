import { ofDay } from "#shared/output/alarm/day-level.ts";
import type { Evidence, FullDay } from "#shared/output/alarm/evidence.ts";
import type { AlarmReason } from "#shared/output/alarm/reason.ts";
import { relievedAt } from "#shared/output/alarm/relief.ts";
import { median } from "#shared/output/median.ts";
import { HOUR_MS } from "#shared/output/rate.ts";

/**
 * A complete day of a tube that drains now, far under the median of the complete days before it. Neither it nor the days that it is held against may begin
 * in the row's first hours after a placement or relief: what an organ pours out then is no measure of what it makes.
 */
export function suddenDropReasons(evidence: Evidence, days: readonly FullDay[]): AlarmReason[] {
  const { tube, zone, rows } = evidence;
  const row = rows.suddenDrop;
  if (row === null) return [];
  const relieved = relievedAt(tube.story, zone);
  const settled =
    relieved === null ? days : days.filter(({ from }) => from >= relieved + row.notInFirstHours * HOUR_MS);
  return settled.flatMap((day, index) => {
    const before = settled.slice(Math.max(0, index - row.underMedianOfDays), index);
    const usual =
      before.length < row.underMedianOfDays ? undefined : median(before.map(({ mlPer24h }) => mlPer24h));
    if (usual === undefined) return [];
    const less = usual - day.mlPer24h;
    if (less * 100 <= row.overPercent * usual || less < row.andMl) return [];
    const args = {
      median: usual,
      days: row.underMedianOfDays,
      overPercent: row.overPercent,
      andMl: row.andMl,
    };
    return [ofDay(day, { code: "sudden-drop", args, source: row.source })];
  });
}
