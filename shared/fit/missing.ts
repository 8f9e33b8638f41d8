import { labelFor } from "#shared/fit/compare-inside.ts";
import type { TubeInside } from "#shared/fit/inside.ts";
import { outsideTolerance } from "#shared/fit/outside-limits.ts";
import type { GoesAs, Missing, Passage } from "#shared/fit/passage.ts";

/**
 * A label speaks for the whole path. Without one, every place that is listed must be measured, and the end hole always: the
 * tapered tip is what usually stops a wire.
 */
export function missingPlaces(as: GoesAs, inside: TubeInside): Missing[] {
  if (labelFor(as, inside).certainty !== "unknown") return [];
  const unmeasured = inside.bores.filter((bore) => bore.inside.certainty === "unknown");
  if (unmeasured.length === inside.bores.length) return [{ what: "takes or bores" }];
  const places = new Set(unmeasured.map((bore) => bore.place));
  const closed = inside.endHole.certainty !== "unknown" && inside.endHole.value === "closed";
  if (!closed && inside.bores.every((bore) => bore.place !== "end hole")) places.add("end hole");
  return [...places].map((place) => ({ what: "bore", place }));
}

/** A measured bore needs the row's clearance, and the row's tolerance of either where none is recorded with it. */
function missingRows({ goes, inside, rows }: Passage): Missing[] {
  const measured = inside.bores.filter((bore) => bore.inside.certainty !== "unknown");
  const missing: Missing[] = [];
  if (measured.length > 0 && rows.clearance === undefined) missing.push({ what: "clearance row" });
  if (measured.some((bore) => bore.tolerance === null) && rows.boreTolerance === undefined) {
    missing.push({ what: "tolerance row" });
  }
  if (measured.length > 0 && outsideTolerance(goes, rows) === undefined) {
    missing.push({ what: "outside tolerance row" });
  }
  return missing;
}

/** What stands between this passage and an answer; empty when all that is needed is there. */
export const missingFor = (passage: Passage): Missing[] => [
  ...(passage.goes.outside.certainty === "unknown" ? [{ what: "outside" } as const] : []),
  ...missingPlaces(passage.goes.as, passage.inside),
  ...missingRows(passage),
];
