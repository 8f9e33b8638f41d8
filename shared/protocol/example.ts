import { exampleCalls } from "#shared/protocol/example-calls.ts";
import { exampleOutputRows } from "#shared/protocol/example-output.ts";
import { exampleBleeding, examplePlanning } from "#shared/protocol/example-planning.ts";
import { exampleRedFlags } from "#shared/protocol/example-red-flags.ts";
import { exampleTubeOut } from "#shared/protocol/example-tube-out.ts";
import { exampleVisits } from "#shared/protocol/example-visits.ts";
import { PROTOCOL_SHAPE, type Protocol } from "#shared/protocol/protocol.ts";
import { type Length, UNITS_PER_INCH, UNITS_PER_MM } from "#shared/size/length.ts";
import { OUTER_TOLERANCE } from "#shared/size/stated-size.ts";
import type { KindDefinition } from "#shared/tube/kind/define.ts";
import { kindOf, type TubeKind, tubeKinds } from "#shared/tube/kind/kinds.ts";

/** One row a kind, where the kind's own data has one. */
const ofKinds = <Row extends object>(
  row: (kind: KindDefinition) => Row | null,
): ({ kind: TubeKind } & Row)[] =>
  tubeKinds.flatMap((kind) => {
    const found = row(kindOf(kind));
    return found === null ? [] : [{ kind, ...found }];
  });

/**
 * The example table that a new clinic starts from: version 1, approved by nobody. Every row is an example for adults, to
 * be replaced by the clinic's own.
 */
export const exampleProtocol: Protocol = {
  shape: PROTOCOL_SHAPE,
  version: 1,
  approved: null,
  ages: "adults",
  intervals: tubeKinds.flatMap((kind) =>
    kindOf(kind).rows.map((row) => ({ kind, ...row, byRoute: [...row.byRoute] })),
  ),
  firstCall: { from: 1, to: 3, source: "CP" },
  escalation: { daysPastTarget: 3, source: "CP" },
  passage: {
    clearance: (UNITS_PER_INCH / 1000) as Length,
    boreTolerance: (UNITS_PER_MM / 20) as Length,
    outsideTolerance: { wire: 0 as Length, device: OUTER_TOLERANCE, source: "wire: MEM; device: 16" },
    source: "CP",
  },
  output: { lowNetMl: 10, lowDays: 2, flushDoesNotComeBackMl: -10, source: "1; rest CP" },
  flush: ofKinds(({ flush }) => flush),
  balloon: {
    first: { from: 14, to: 28 },
    every: 7,
    lossOverMl: 0.5,
    alarmAfter: 2,
    fill: "water, not saline or air",
    source: "15; rest CP",
  },
  tips: ofKinds(({ tip }) => tip),
  anchors: ofKinds(({ skin }) => skin),
  outputRows: exampleOutputRows,
  tubeOut: exampleTubeOut,
  redFlags: exampleRedFlags,
  calls: exampleCalls,
  bleeding: exampleBleeding,
  planning: examplePlanning,
  visits: exampleVisits,
};
