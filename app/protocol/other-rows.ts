import type { FactRow } from "#app/facts/fact-list.tsx";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { Length } from "#shared/size/length.ts";
import { printBoth } from "#shared/size/print-length.ts";

type Sourced = { readonly source: string };

const from = ({ source }: Sourced): string => ` (source ${source})`;

const NO_ROW = "no row";

function toleranceWords(tolerance: Length | null): string {
  if (tolerance === null) return NO_ROW;
  return tolerance === 0 ? "none, as stated" : printBoth(tolerance, "mm", "in");
}

function outsideRow(row: Protocol["passage"]["outsideTolerance"]): FactRow {
  const told = (what: string, tolerance: Length | null): string => `${what} ${toleranceWords(tolerance)}`;
  return {
    word: "Tolerance of an outside",
    says: `${told("of a wire", row.wire)}; ${told("of any other device", row.device)} about its stated size${from(row)}`,
  };
}

/** What an exchange is planned by; each part that the version does not hold is told as no row. */
function planningWords(planning: Protocol["planning"]): readonly FactRow[] {
  const { upsize = null, wire = null, readyF = null, findInsides = null, reasons = null } = planning ?? {};
  const row = <T extends Sourced>(word: string, part: T | null, says: (part: T) => string): FactRow => ({
    word,
    says: part === null ? NO_ROW : `${says(part)}${from(part)}`,
  });
  return [
    row(
      "Step when upsizing",
      upsize,
      ({ usualStepF, noteOverF }) => `usual ${usualStepF} F, a note over ${noteOverF} F`,
    ),
    row(
      "Length of a wire",
      wire,
      ({ beyondTipCm, gripCm }) =>
        `inside + ${beyondTipCm.from} to ${beyondTipCm.to} cm beyond the tip + longest device + ${gripCm} cm to hold`,
    ),
    row("Kept ready", readyF, ({ below, above }) => `the size ${below} F below and ${above} F above`),
    row(
      "Unknown insides",
      findInsides,
      ({ withinDays }) => `to be found out from ${withinDays} days before a planned exchange`,
    ),
    row(
      "Reasons",
      reasons,
      ({ asks, offered }) => `asked where: ${asks.join(", ")}; on offer: ${offered.join("; ")}`,
    ),
    ...(planning?.release ?? []).map((each) =>
      row(`Letting go of: ${each.retentions.join(", ")}`, each, ({ says, comesOut }) =>
        comesOut === null ? says : `${says}; must come out: ${comesOut}`,
      ),
    ),
    ...(planning?.notOverWire ?? []).map((each) =>
      row(`Not over a wire: ${each.kinds.join(", ")}`, each, ({ says }) => says),
    ),
  ];
}

/** Every row that is no interval, in words, each with its source. */
export function otherRows({
  firstCall,
  escalation,
  passage,
  output,
  planning,
}: Protocol): readonly FactRow[] {
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
    outsideRow(passage.outsideTolerance),
    ...planningWords(planning),
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
