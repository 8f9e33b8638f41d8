import { dayAt, type Instant, instant } from "#shared/day/instant.ts";
import { type DrySpell, drySpells } from "#shared/output/alarm/dry-spells.ts";
import { type Evidence, flagOf } from "#shared/output/alarm/evidence.ts";
import { type OnlyWay, onlyWayOut } from "#shared/output/alarm/only-way-out.ts";
import type { AlarmReason } from "#shared/output/alarm/reason.ts";
import { HOUR_MS } from "#shared/output/rate.ts";

const MINUTE_MS = 60_000;

/** What was answered of being dry, and what lay before it, counts no more. */
const answeredUntil = ({ tube }: Evidence): Instant[] =>
  tube.answered.flatMap(({ key, until }) => (key.startsWith("dry:") && until !== null ? [until] : []));

/** Where the table knows a faster level for the only way out of urine, whether this is it. */
const wayOut = (evidence: Evidence, row: DryRow, spell: DrySpell): OnlyWay =>
  row.onlyWayOut === null ? { because: null, notKnown: false } : onlyWayOut(evidence, row, spell);

type DryRow = Evidence["rows"]["dry"][number];

/** Nothing out of a tube that drains now over the row's hours, at them and not before. Hours of readings, not of silence: missing is not zero. */
export function dryReasons(evidence: Evidence): AlarmReason[] {
  const row = evidence.rows.dry.find(({ kinds }) => kinds.includes(evidence.tube.kind));
  if (row === undefined) return [];
  return drySpells(evidence, answeredUntil(evidence))
    .filter(({ from, to }) => to - from >= row.hours * HOUR_MS)
    .map((spell) => {
      const { from, to, readings } = spell;
      const way = wayOut(evidence, row, spell);
      return {
        key: `dry:${readings[0]}`,
        code: "dry",
        level: way.because === null ? row.level : row.onlyWayOut,
        untilReached: flagOf(evidence, "dry")?.untilReached ?? null,
        on: dayAt(instant(from + row.hours * HOUR_MS), evidence.zone),
        at: to,
        readings,
        args: {
          minutes: Math.floor((to - from) / MINUTE_MS),
          hours: row.hours,
          onlyWayOut: way.because,
          otherWays: way.notKnown ? "not known" : null,
        },
        source: row.source,
      };
    });
}
