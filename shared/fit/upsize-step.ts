import type { PlanningRows } from "#shared/protocol/planning-rows.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import type { Length } from "#shared/size/length.ts";
import type { Fact } from "#shared/tube/certainty.ts";

/** The step in French from the tube in place to the tube to come, against the row. */
export type UpsizeStep =
  | {
      readonly verdict: "within the usual step" | "over the usual step" | "over the step with a note";
      readonly by: Length;
      readonly from: Length;
      readonly to: Length;
      /** Both sizes were seen here. */
      readonly sure: boolean;
      readonly usual: Length;
      readonly noteOver: Length;
    }
  | { readonly verdict: "no upsize"; readonly from: Length; readonly to: Length }
  | {
      readonly verdict: "cannot tell";
      readonly missing: readonly ("size in place" | "size to come" | "row")[];
    };

/** Up to and including the usual step is within it; up to and including the step over which a note is asked asks for none. */
export function upsizeStep(
  inPlace: Fact<Length>,
  toCome: Fact<Length>,
  row: PlanningRows["upsize"],
): UpsizeStep {
  if (inPlace.certainty === "unknown" || toCome.certainty === "unknown" || row === null) {
    const missing = [
      ...(inPlace.certainty === "unknown" ? (["size in place"] as const) : []),
      ...(toCome.certainty === "unknown" ? (["size to come"] as const) : []),
      ...(row === null ? (["row"] as const) : []),
    ];
    return { verdict: "cannot tell", missing };
  }
  const [from, to] = [inPlace.value, toCome.value];
  if (to <= from) return { verdict: "no upsize", from, to };
  const by = (to - from) as Length;
  const usual = lengthOf(row.usualStepF, "F");
  const noteOver = lengthOf(row.noteOverF, "F");
  const sure = inPlace.certainty === "confirmed" && toCome.certainty === "confirmed";
  const verdict =
    by <= usual
      ? "within the usual step"
      : by <= noteOver
        ? "over the usual step"
        : "over the step with a note";
  return { verdict, by, from, to, sure, usual, noteOver };
}

export type Sized = { readonly name: string; readonly outside: Fact<Length> };

/** Of a list of dilators those over the old size and up to the new one, thinnest first, and the first above the new one. */
export function dilatorsBetween<T extends Sized>(
  dilators: readonly T[],
  { from, to }: { readonly from: Length; readonly to: Length },
): { readonly between: readonly T[]; readonly above: T | null } {
  const sized = dilators.flatMap((dilator) =>
    dilator.outside.certainty === "unknown" ? [] : [{ dilator, size: dilator.outside.value }],
  );
  const rising = sized.toSorted((a, b) => a.size - b.size);
  return {
    between: rising.filter(({ size }) => size > from && size <= to).map(({ dilator }) => dilator),
    above: rising.find(({ size }) => size > to)?.dilator ?? null,
  };
}
