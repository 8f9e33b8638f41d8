import { type Bore, places } from "#shared/fit/inside.ts";
import type {
  BoreComparison,
  Comparison,
  Gap,
  LabelComparison,
  Limits,
  Outcome,
  Passage,
  PassageRows,
  TipComparison,
} from "#shared/fit/passage.ts";
import type { Length } from "#shared/size/length.ts";
import type { Fact } from "#shared/tube/certainty.ts";

const gapOf = (wire: Length, opening: Length): Gap =>
  wire > opening
    ? { is: "too thick", by: (wire - opening) as Length }
    : { is: "room", by: (opening - wire) as Length };

function outcomeOf(wire: Length, limits: Limits): Outcome {
  if (wire <= limits.least) return "passes";
  return wire > limits.most ? "does not pass" : "doubt";
}

const atLeastNothing = (units: number): Length => Math.max(0, units) as Length;

function againstLabel(wire: Length, takes: Fact<Length>): LabelComparison[] {
  if (takes.certainty === "unknown") return [];
  const limits = { least: takes.value, most: takes.value };
  const says = outcomeOf(wire, limits);
  return [{ basis: "label", certainty: takes.certainty, says, limits, gap: gapOf(wire, takes.value) }];
}

/** Empty when the inside is unknown or a row that it needs is missing. */
function againstBore(wire: Length, bore: Bore, rows: PassageRows): BoreComparison[] {
  const { place, inside } = bore;
  const { clearance } = rows;
  const tolerance = bore.tolerance ?? rows.boreTolerance;
  if (inside.certainty === "unknown" || clearance === undefined || tolerance === undefined) return [];
  const limits = {
    least: atLeastNothing(inside.value - tolerance - clearance),
    most: atLeastNothing(inside.value + tolerance - clearance),
  };
  return [
    {
      basis: "bore",
      place,
      certainty: inside.certainty,
      says: outcomeOf(wire, limits),
      inside: inside.value,
      tolerance,
      toleranceFrom: bore.tolerance === null ? "row" : "recorded",
      clearance,
      limits,
      gap: gapOf(wire, inside.value),
    },
  ];
}

function againstTip(endHole: Fact<"open" | "closed">): TipComparison[] {
  if (endHole.certainty === "unknown" || endHole.value === "open") return [];
  return [{ basis: "closed end hole", certainty: endHole.certainty, says: "does not pass" }];
}

/** Every recorded fact of the inside held against a wire: bores from the hub to the tip, a closed tip, the label. */
export const compareWire = (wire: Length, { inside, rows }: Omit<Passage, "wire">): Comparison[] => [
  ...inside.bores
    .toSorted((a, b) => places.indexOf(a.place) - places.indexOf(b.place))
    .flatMap((bore) => againstBore(wire, bore, rows)),
  ...againstTip(inside.endHole),
  ...againstLabel(wire, inside.takes),
];

/**
 * What a comparison counts for. What is reported or estimated, the wire or the tube, is doubt at best and doubt at worst: a
 * figure that nobody here has seen neither opens a way nor closes one.
 */
export const weigh = (comparison: Comparison, wire: Fact<Length>): Outcome =>
  comparison.certainty === "confirmed" && wire.certainty === "confirmed" ? comparison.says : "doubt";
