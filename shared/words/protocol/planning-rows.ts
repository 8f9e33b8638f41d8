import type { Protocol } from "#shared/protocol/protocol.ts";
import type { Length } from "#shared/size/length.ts";
import { printBoth } from "#shared/size/print-length.ts";
import {
  eachRow,
  ifAny,
  kindsOf,
  NO_ROW,
  type RowWords,
  rowWords,
} from "#shared/words/protocol/row-words.ts";

function toleranceWords(tolerance: Length | null): string {
  if (tolerance === null) return NO_ROW;
  return tolerance === 0 ? "none, as stated" : printBoth(tolerance, "mm", "in");
}

/** What one thing needs to pass through another. */
export const passageRowWords = ({ passage }: Protocol): readonly RowWords[] => [
  rowWords("Clearance of a wire in a bore", passage, ({ clearance }) => printBoth(clearance, "in", "mm")),
  rowWords(
    "Tolerance of a bore",
    passage,
    ({ boreTolerance }) => `${printBoth(boreTolerance, "mm", "in")} where none is recorded`,
  ),
  rowWords(
    "Tolerance of an outside",
    passage.outsideTolerance,
    ({ wire, device }) =>
      `of a wire ${toleranceWords(wire)}; of any other device ${toleranceWords(device)} about its stated size`,
  ),
];

/** What an exchange is planned by; each part that the version does not hold is told as no row. */
export function planningRowWords({ planning }: Protocol): readonly RowWords[] {
  if (planning === null) return [{ word: "Planning an exchange", says: NO_ROW }];
  return [
    ...eachRow("Room", planning.room, { of: kindsOf, says: ({ minutes }) => `${minutes} minutes` }),
    rowWords(
      "Step when upsizing",
      planning.upsize,
      ({ usualStepF, noteOverF }) => `usual ${usualStepF} F, a note over ${noteOverF} F`,
    ),
    rowWords(
      "Length of a wire",
      planning.wire,
      ({ beyondTipCm, gripCm }) =>
        `inside + ${beyondTipCm.from} to ${beyondTipCm.to} cm beyond the tip + longest device + ${gripCm} cm to hold`,
    ),
    rowWords(
      "Kept ready",
      planning.readyF,
      ({ below, above }) => `the size ${below} F below and ${above} F above`,
    ),
    rowWords(
      "Unknown insides",
      planning.findInsides,
      ({ withinDays }) => `to be found out from ${withinDays} days before a planned exchange`,
    ),
    rowWords(
      "Reasons",
      planning.reasons,
      ({ asks, offered }) => `asked where: ${asks.join(", ")}; on offer: ${offered.join("; ")}`,
    ),
    ...eachRow("Letting go of", planning.release, {
      of: ({ retentions }) => retentions.join(", "),
      says: ({ says, comesOut }) => `${says}${ifAny(comesOut, (what) => `; must come out: ${what}`)}`,
    }),
    ...eachRow("Not over a wire", planning.notOverWire, { of: kindsOf, says: ({ says }) => says }),
    rowWords("Removal of a nephrostomy beside a stent", planning.besideStent, ({ says }) => says),
  ];
}
