import type { ProtocolRow } from "#shared/protocol/interval-row.ts";
import { type Route, routes } from "#shared/tube/vocabulary.ts";

export type TractQuestion = {
  /** The route as it was typed, in words; null where nobody said. */
  readonly route: string | null;
  readonly slowToHeal: boolean;
};

/** Tract ages in days from the puncture, of one row for one patient; null is "no row". */
export type TractAges = {
  readonly immatureUnder: number | null;
  readonly matureFrom: number | null;
  readonly inHospitalUnder: number | null;
  readonly notRemovedBefore: number | null;
};

/** The route that the words name; null where they name none, or both. */
export function routeOf(text: string | null): Route | null {
  const named = routes.filter((route) => text?.toLowerCase().includes(route));
  return named.length === 1 ? (named[0] ?? null) : null;
}

const longest = (ages: readonly number[]): number | null => (ages.length === 0 ? null : Math.max(...ages));

/** Of an unknown route each counts. */
function agesByRoute({ byRoute }: ProtocolRow, route: string | null): ProtocolRow["byRoute"] {
  const named = routeOf(route);
  const known = byRoute.filter((ages) => ages.route === named);
  return known.length > 0 ? known : byRoute;
}

/** Days from the puncture before which the row has no removal, however it heals; null is "no row". */
export const notRemovedBefore = (row: ProtocolRow, route: string | null): number | null =>
  longest(agesByRoute(row, route).map((ages) => ages.notRemovedBefore)) ?? row.notRemovedBefore;

/** The row's ages. Of an unknown route the longest counts: an unknown is never read as good. */
export function tractAges(row: ProtocolRow, { route, slowToHeal }: TractQuestion): TractAges {
  const byRoute = agesByRoute(row, route);
  const immature =
    longest(byRoute.map(({ immatureUnder }) => immatureUnder)) ??
    (slowToHeal ? (row.immatureIfSlowUnder ?? row.immatureUnder) : row.immatureUnder);
  return {
    immatureUnder: immature,
    matureFrom: row.matureFrom ?? immature,
    inHospitalUnder: row.inHospitalUnder,
    notRemovedBefore: notRemovedBefore(row, route),
  };
}

/** `neither`: past the age of the one and before that of the other. `no row`: the table does not say. */
export type Maturity = "immature" | "neither" | "mature" | "no row" | "cannot tell";

/** A tract of an age in days, null where it is unknown, against the row's ages. */
export function maturity({ immatureUnder, matureFrom }: TractAges, age: number | null): Maturity {
  if (immatureUnder === null || matureFrom === null) return "no row";
  if (age === null) return "cannot tell";
  if (age < immatureUnder) return "immature";
  return age < matureFrom ? "neither" : "mature";
}
