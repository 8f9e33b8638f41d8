import { labelFor } from "#shared/fit/compare-inside.ts";
import type { Bore, Place } from "#shared/fit/inside.ts";
import type { Passage } from "#shared/fit/passage.ts";
import type { Length } from "#shared/size/length.ts";
import type { Certainty } from "#shared/tube/certainty.ts";

type Known = { readonly certainty: Exclude<Certainty, "unknown"> };

/**
 * The inside of a wall as it may be drawn. Widths are whole widths in units of Length, never halved. `measured` has both extremes
 * of its tolerance; `by label` is what the package says it takes; `unknown` fades into hatching, never into an open way.
 */
export type Inner =
  | (Known & {
      readonly known: "measured";
      readonly least: number;
      readonly most: number;
      readonly toleranceKnown: boolean;
    })
  | (Known & { readonly known: "by label"; readonly width: number })
  | (Known & { readonly known: "closed" })
  | { readonly known: "unknown" };

type Measured = Extract<Inner, { known: "measured" }>;

function measuredBy(bore: Bore, rowTolerance: Length | undefined): Measured[] {
  if (bore.inside.certainty === "unknown") return [];
  const { value, certainty } = bore.inside;
  const tolerance = bore.tolerance ?? rowTolerance;
  const spread = tolerance ?? 0;
  return [
    {
      known: "measured",
      least: Math.max(0, value - spread),
      most: value + spread,
      certainty,
      toleranceKnown: tolerance !== undefined,
    },
  ];
}

/** A closed tip first, then the narrowest bore measured here, then the label, else unknown. */
export function innerAt(place: Place, { goes, inside, rows }: Passage): Inner {
  const { endHole, bores } = inside;
  const takes = labelFor(goes.as, inside);
  if (place === "end hole" && endHole.certainty !== "unknown" && endHole.value === "closed") {
    return { known: "closed", certainty: endHole.certainty };
  }
  const [narrowest] = bores
    .filter((bore) => bore.place === place)
    .flatMap((bore) => measuredBy(bore, rows.boreTolerance))
    .toSorted((a, b) => a.least - b.least);
  if (narrowest !== undefined) return narrowest;
  return takes.certainty === "unknown"
    ? { known: "unknown" }
    : { known: "by label", width: takes.value, certainty: takes.certainty };
}

/** The widest that is drawn here; 0 where nothing is known to be open. */
export function widestOf(inner: Inner): number {
  switch (inner.known) {
    case "measured":
      return inner.most;
    case "by label":
      return inner.width;
    case "closed":
    case "unknown":
      return 0;
  }
}
