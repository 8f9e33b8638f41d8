import { alarmReasons } from "#shared/output/alarm/alarm-reasons.ts";
import { criterionOf } from "#shared/output/criterion/criterion-of.ts";
import { lowRowOf } from "#shared/output/low-row.ts";
import { outputOfTube } from "#shared/output/output-of-tube.ts";
import { trendOfTube } from "#shared/output/trend/trend-of-tube.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { known } from "#shared/tube/certainty.ts";
import { fold } from "#shared/tube/fold.ts";
import type { Figure } from "#tests/bench/figure.ts";
import { byTurns, median } from "#tests/bench/sample.ts";
import { daily, noon, utc } from "#tests/factories/criterion.ts";
import { clinicalStateNoted, placed } from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";

const TURNS = 300;
const READINGS = 120;

/** A collection that falls from 240 mL a day with a wobble, so that slope, rank and half-life are all worked out. */
const volumes = Array.from({ length: READINGS }, (_, day) => 12 + 228 * 0.97 ** day + (day % 7));

const { tubes, clinical, conditions } = fold(
  history(
    placed({ kind: "abscess drain", side: "not sided", on: "2026-07-01" }),
    clinicalStateNoted({ on: "2026-11-16", at: "08:00" }),
  ),
);

/** All that stands behind one tube's output, from 120 readings of 120 days: net days, criterion, alarms and the why behind them. */
export function tubeOutputFigure(): Figure {
  const [tube] = tubes;
  if (tube === undefined) throw new Error("no tube was told");
  const protocol = exampleProtocol;
  const readings = daily("2026-11-15", volumes);
  const beside = { readings, zone: utc, now: noon };
  const times = byTurns(
    TURNS,
    () => {
      const { days } = outputOfTube(tube, { ...beside, row: protocol.output });
      const { role, mode, kind } = tube;
      const trend = trendOfTube(days, { role, mode, row: lowRowOf(kind, protocol) });
      criterionOf({ ...beside, tube, tubes, clinical, conditions, age: "adult", protocol });
      alarmReasons({ ...beside, tube, conditions, clinical, others: () => [], protocol });
      if (trend.kind !== "told") throw new Error("the series has no trend");
    },
    () => {
      readings.reduce((sum, { gross }) => sum + (known(gross) ?? 0), 0);
    },
  );
  return {
    what: `series, criterion, alarms and why of ${READINGS} readings`,
    value: median(times.ours),
    unit: "ms",
    floor: { is: "their sum", value: median(times.floor) },
    aim: { kind: "at most", value: 2 },
  };
}
