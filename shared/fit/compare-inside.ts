import { type Bore, places, type TubeInside } from "#shared/fit/inside.ts";
import { outsideLimits } from "#shared/fit/outside-limits.ts";
import type {
  BoreComparison,
  Comparison,
  Gap,
  Goes,
  GoesAs,
  LabelComparison,
  Limits,
  Outcome,
  Passage,
  PassageRows,
  TipComparison,
} from "#shared/fit/passage.ts";
import type { Length } from "#shared/size/length.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";

const gapOf = (outside: Length, opening: Length): Gap =>
  outside > opening
    ? { is: "too thick", by: (outside - opening) as Length }
    : { is: "room", by: (opening - outside) as Length };

function outcomeOf(outside: Length, limits: Limits): Outcome {
  if (outside <= limits.least) return "passes";
  return outside > limits.most ? "does not pass" : "doubt";
}

const atLeastNothing = (units: number): Length => Math.max(0, units) as Length;

/**
 * What the package says of this sort of thing. A label for devices speaks for a wire too, where none for wires is known; a label for
 * wires says nothing of a device.
 */
export function labelFor(as: GoesAs, { takes, takesDevice = unknownFact }: TubeInside): Fact<Length> {
  return as === "wire" && takes.certainty !== "unknown" ? takes : takesDevice;
}

function againstLabel(outside: Length, takes: Fact<Length>): LabelComparison[] {
  if (takes.certainty === "unknown") return [];
  const limits = { least: takes.value, most: takes.value };
  const says = outcomeOf(outside, limits);
  return [{ basis: "label", certainty: takes.certainty, says, limits, gap: gapOf(outside, takes.value) }];
}

type Held = { readonly outside: Length; readonly goes: Goes; readonly rows: PassageRows };

/** Empty when the inside is unknown or a row that it needs is missing. */
function againstBore(
  { place, inside, tolerance: own }: Bore,
  { outside, goes, rows }: Held,
): BoreComparison[] {
  const { clearance } = rows;
  const tolerance = own ?? rows.boreTolerance;
  const measures = outsideLimits(outside, goes, rows);
  if (inside.certainty === "unknown" || clearance === undefined) return [];
  if (tolerance === undefined || measures === undefined) return [];
  const limits = {
    least: atLeastNothing(inside.value - tolerance - clearance - (measures.most - outside)),
    most: atLeastNothing(inside.value + tolerance - clearance + (outside - measures.least)),
  };
  return [
    {
      basis: "bore",
      place,
      certainty: inside.certainty,
      says: outcomeOf(outside, limits),
      inside: inside.value,
      tolerance,
      toleranceFrom: own === null ? "row" : "recorded",
      clearance,
      outsideTolerance: measures.tolerance,
      outsideToleranceFrom: measures.from,
      limits,
      gap: gapOf(outside, inside.value),
    },
  ];
}

function againstTip(endHole: Fact<"open" | "closed">): TipComparison[] {
  if (endHole.certainty === "unknown" || endHole.value === "open") return [];
  return [{ basis: "closed end hole", certainty: endHole.certainty, says: "does not pass" }];
}

/** Every recorded fact of the inside held against what goes through: bores from the hub to the tip, a closed tip, the label. */
export const compareInside = (outside: Length, { goes, inside, rows }: Passage): Comparison[] => [
  ...inside.bores
    .toSorted((a, b) => places.indexOf(a.place) - places.indexOf(b.place))
    .flatMap((bore) => againstBore(bore, { outside, goes, rows })),
  ...againstTip(inside.endHole),
  ...againstLabel(outside, labelFor(goes.as, inside)),
];

/**
 * What a comparison counts for. What is reported or estimated, what goes through or the tube, is doubt at best and doubt at worst: a
 * figure that nobody here has seen neither opens a way nor closes one.
 */
export const weigh = (comparison: Comparison, outside: Fact<Length>): Outcome =>
  comparison.certainty === "confirmed" && outside.certainty === "confirmed" ? comparison.says : "doubt";
