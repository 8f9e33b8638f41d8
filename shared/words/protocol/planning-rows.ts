import type { Protocol } from "#shared/protocol/protocol.ts";
import type { RoomRow } from "#shared/protocol/visit-rows.ts";
import type { Length } from "#shared/size/length.ts";
import { printBoth } from "#shared/size/print-length.ts";
import { andList } from "#shared/words/and-list.ts";
import { eachRow, ifAny, NO_ROW, noRows, type RowWords, rowWords } from "#shared/words/protocol/row-words.ts";

function toleranceWords(tolerance: Length | null): string {
  if (tolerance === null) return NO_ROW;
  return tolerance === 0 ? "none, as stated" : printBoth(tolerance, "mm", "in");
}

/** What one thing needs to pass through another. */
export const passageRowWords = ({ passage }: Protocol): readonly RowWords[] => [
  rowWords({ of: "passage", word: "Clearance of a wire in a bore" }, passage, ({ clearance }) =>
    printBoth(clearance, "in", "mm"),
  ),
  rowWords(
    { of: "passage", word: "Tolerance of a bore" },
    passage,
    ({ boreTolerance }) => `${printBoth(boreTolerance, "mm", "in")} where none is recorded`,
  ),
  rowWords(
    { of: "passage", word: "Tolerance of an outside" },
    passage.outsideTolerance,
    ({ wire, device }) =>
      `of a wire ${toleranceWords(wire)}; of any other device ${toleranceWords(device)} about its stated size`,
  ),
];

const roomWords = ({ minutes, further, needs }: RoomRow): string =>
  [
    `${minutes} minutes`,
    further === null
      ? "a further tube of the visit counts whole"
      : `each further tube of the visit ${further} minutes`,
    needs.length === 0 ? "" : `in a room with ${andList(needs)}`,
  ]
    .filter(Boolean)
    .join("; ");

/** What an exchange is planned by; each part that the version does not hold is told as no row. */
export function planningRowWords({ planning }: Protocol): readonly RowWords[] {
  if (planning === null) return [noRows("planning", "Planning an exchange")];
  return [
    ...eachRow("planning.room", planning.room, roomWords),
    rowWords(
      "planning.upsize",
      planning.upsize,
      ({ usualStepF, noteOverF }) => `usual ${usualStepF} F, a note over ${noteOverF} F`,
    ),
    rowWords(
      "planning.wire",
      planning.wire,
      ({ beyondTipCm, gripCm }) =>
        `inside + ${beyondTipCm.from} to ${beyondTipCm.to} cm beyond the tip + longest device + ${gripCm} cm to hold`,
    ),
    rowWords(
      "planning.readyF",
      planning.readyF,
      ({ below, above }) => `the size ${below} F below and ${above} F above`,
    ),
    rowWords(
      "planning.findInsides",
      planning.findInsides,
      ({ withinDays }) => `to be found out from ${withinDays} days before a planned exchange`,
    ),
    rowWords(
      "planning.reasons",
      planning.reasons,
      ({ asks, offered }) => `asked where: ${asks.join(", ")}; on offer: ${offered.join("; ")}`,
    ),
    ...eachRow(
      "planning.release",
      planning.release,
      ({ says, comesOut }) => `${says}${ifAny(comesOut, (what) => `; must come out: ${what}`)}`,
    ),
    ...eachRow("planning.notOverWire", planning.notOverWire, ({ says }) => says),
    rowWords("planning.besideStent", planning.besideStent, ({ says }) => says),
  ];
}
