import type { FactRow } from "#app/facts/fact-list.tsx";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { printBoth } from "#shared/size/print-length.ts";

/** Every row that is no interval, in words, each with its source. */
export function otherRows({ firstCall, escalation, passage, output }: Protocol): readonly FactRow[] {
  const from = ({ source }: { readonly source: string }): string => ` (source ${source})`;
  return [
    {
      word: "First call",
      says: `day ${firstCall.from} to ${firstCall.to} after the start${from(firstCall)}`,
    },
    {
      word: "A physician is asked",
      says: `${escalation.daysPastTarget} days past the target${from(escalation)}`,
    },
    {
      word: "Clearance of a wire in a bore",
      says: `${printBoth(passage.clearance, "in", "mm")}${from(passage)}`,
    },
    {
      word: "Tolerance of a bore",
      says: `${printBoth(passage.boreTolerance, "mm", "in")} where none is recorded${from(passage)}`,
    },
    {
      word: "Low output",
      says: `net under ${output.lowNetMl} mL/24 h on ${output.lowDays} complete days running${from(output)}`,
    },
    {
      word: "Flush does not come back",
      says: `net under ${output.flushDoesNotComeBackMl} mL/24 h${from(output)}`,
    },
  ];
}
