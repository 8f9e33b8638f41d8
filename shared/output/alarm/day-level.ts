import { addDays, type Day } from "#shared/day/day.ts";
import { dayAt } from "#shared/day/instant.ts";
import { type Evidence, type FullDay, flagOf } from "#shared/output/alarm/evidence.ts";
import type { AlarmCode, AlarmReason } from "#shared/output/alarm/reason.ts";
import { relievedAt } from "#shared/output/alarm/relief.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { UsualRow } from "#shared/tube/vocabulary.ts";

/**
 * A usual level answers its row up to its day, unless the figure lies further from that level, the row's way, than the percent
 * by which the table knows a sudden drop.
 */
function isUsual({ tube, rows }: Evidence, row: UsualRow, { day, mlPer24h }: FullDay): boolean {
  const accepted = tube.usual.find((level) => level.row === row && day <= level.until);
  if (accepted === undefined) return false;
  const off = row === "low" ? accepted.mlPer24h - mlPer24h : mlPer24h - accepted.mlPer24h;
  const percent = rows.suddenDrop?.overPercent ?? null;
  return percent === null || off * 100 <= percent * accepted.mlPer24h;
}

type Met = { readonly code: AlarmCode; readonly args: AlarmReason["args"]; readonly source: string };

/** A reason of one complete day. */
export const ofDay = (day: FullDay, { code, args, source }: Met): AlarmReason => ({
  key: `${code}:${day.day}`,
  code,
  level: null,
  untilReached: null,
  on: day.day,
  at: day.to,
  readings: day.readings,
  args: { day: day.day, mlPer24h: day.mlPer24h, ...args },
  source,
});

/** Complete days of a tube that drains now under the row, not at it. */
export function lowReasons(evidence: Evidence, days: readonly FullDay[]): AlarmReason[] {
  const row = evidence.rows.low.find(({ kinds }) => kinds.includes(evidence.tube.kind));
  const under = row?.underMlPer24h ?? null;
  if (row === undefined || under === null) return [];
  return days
    .filter((day) => day.mlPer24h < under && !isUsual(evidence, "low", day))
    .map((day) => ofDay(day, { code: "low", args: { under }, source: row.source }));
}

/** The first day that the row speaks of: so many days after the placement or relief. */
function spokenOfFrom({ tube, zone }: Evidence, fromDay: number | null): Day | null {
  if (fromDay === null) return null;
  const relieved = relievedAt(tube.story, zone);
  return relieved === null ? null : addDays(dayAt(relieved, zone), fromDay);
}

/** Complete days of a tube that drains now over the row, from its first day on. */
export function highReasons(evidence: Evidence, days: readonly FullDay[]): AlarmReason[] {
  const row = evidence.rows.high.find(({ kinds }) => kinds.includes(evidence.tube.kind));
  if (row === undefined) return [];
  const from = spokenOfFrom(evidence, row.fromDay);
  const bile = kindOf(evidence.tube.kind).output === "bile";
  const flag = bile ? flagOf(evidence, "much bile or dizzy") : undefined;
  return days
    .filter(({ day, mlPer24h }) => mlPer24h > row.overMlPer24h && (from === null || day >= from))
    .filter((day) => !isUsual(evidence, "high", day))
    .map((day) => ({
      ...ofDay(day, { code: "high", args: { over: row.overMlPer24h }, source: row.source }),
      level: flag?.level ?? null,
      untilReached: flag?.untilReached ?? null,
    }));
}
