import type { Protocol } from "#shared/protocol/protocol.ts";
import { type Length, UNITS_PER_INCH, UNITS_PER_MM } from "#shared/size/length.ts";
import { kindOf, tubeKinds } from "#shared/tube/kind/kinds.ts";

/**
 * The example table that a new clinic starts from: version 1, approved by nobody. Every row is an example for adults, to
 * be replaced by the clinic's own.
 */
export const exampleProtocol: Protocol = {
  version: 1,
  approved: null,
  ages: "adults",
  intervals: tubeKinds.flatMap((kind) => kindOf(kind).rows.map((row) => ({ kind, ...row }))),
  firstCall: { from: 1, to: 3, source: "CP" },
  escalation: { daysPastTarget: 3, source: "CP" },
  passage: {
    clearance: (UNITS_PER_INCH / 1000) as Length,
    boreTolerance: (UNITS_PER_MM / 20) as Length,
    source: "CP",
  },
  output: { lowNetMl: 10, lowDays: 2, flushDoesNotComeBackMl: -10, source: "1; rest CP" },
};
