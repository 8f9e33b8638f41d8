import { openedBy, questionsOf } from "#shared/call/questions.ts";
import { type Day, daysBetween } from "#shared/day/day.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { RedFlagRow } from "#shared/protocol/red-flag-rows.ts";
import { type Maturity, maturity, type TractAges } from "#shared/protocol/tract-ages.ts";
import type { TubeOutRow } from "#shared/protocol/tube-out-rows.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import type { Length } from "#shared/size/length.ts";
import { type Fact, known } from "#shared/tube/certainty.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";

export type HowFarOut = TubeOutRow["out"];

/** A tract on the day on which its tube came out. */
export type TractOut = {
  readonly age: number | null;
  readonly maturity: Maturity;
  /** What the row says of which tract is shown first: whatever cannot be called mature stands as immature. */
  readonly first: "immature" | "mature";
  /** The days that nobody knows, for want of which no age can be told. */
  readonly unknown: readonly ("puncture" | "out")[];
};

/** The latest plausible day of the puncture, null where nobody can tell, and the ages of its interval row, null where it has none. */
export type Tract = { readonly since: Day | null; readonly ages: TractAges | null };

/**
 * How old a tract is at least on the earliest day on which its tube may have come out, and what its row makes of that; null: nobody knows the
 * day, so that no age can be told. Shown, not decided.
 */
export function tractOut({ since, ages }: Tract, on: Day | null): TractOut {
  const age = since === null || on === null ? null : Math.max(0, daysBetween(since, on));
  const stands = ages === null ? "no row" : maturity(ages, age);
  return {
    age,
    maturity: stands,
    first: stands === "mature" ? "mature" : "immature",
    unknown: [...(since === null ? ["puncture" as const] : []), ...(on === null ? ["out" as const] : [])],
  };
}

/** What the row says of a tract of that age, and what of the other where it is not known which of them it is. */
export function rowSays(
  row: Pick<TubeOutRow, "immature" | "mature">,
  { maturity: stands, first }: Pick<TractOut, "maturity" | "first">,
): { readonly says: string; readonly ifMature: string | null } {
  const isOpen = stands !== "immature" && stands !== "mature" && row.mature !== row.immature;
  return { says: row[first], ifMature: isOpen ? row.mature : null };
}

/** The size one usual step below what was in; null where size or row is unknown, or nothing is left. */
export function oneBelow(size: Fact<Length>, upsize: { readonly usualStepF: number } | null): Length | null {
  const was = known(size);
  if (was === undefined || upsize === null) return null;
  const below = was - lengthOf(upsize.usualStepF, "F");
  return below > 0 ? (below as Length) : null;
}

/** The red flag of a tube that comes out: of the clinic's question whose answer leads to the record of a tube that is out. Null: no row. */
export function flagOfOut(
  tube: TubeState,
  { conditions }: Pick<PatientTubes, "conditions">,
  protocol: Pick<Protocol, "calls" | "redFlags">,
): RedFlagRow | null {
  const patient = { tubes: [{ ...tube, status: "in" as const }], conditions };
  const [asked] = questionsOf(
    (protocol.calls?.questions ?? []).filter(({ thenRecord }) => thenRecord === "tube out"),
    patient,
  );
  return asked === undefined ? null : openedBy(asked, patient, protocol).flag;
}
