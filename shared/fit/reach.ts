import type { Length } from "#shared/size/length.ts";
import type { Certainty, Fact } from "#shared/tube/certainty.ts";

/** Whether one length reaches as far as another. What is reported or estimated is doubt, either way. */
export type Reach =
  | { readonly verdict: "long enough" | "too short"; readonly by: Length }
  | {
      readonly verdict: "doubt";
      readonly of: "long enough" | "too short";
      readonly by: Length;
      readonly certainty: Exclude<Certainty, "confirmed" | "unknown">;
    }
  | { readonly verdict: "cannot tell"; readonly missing: readonly ("inner" | "outer")[] };

/** The less sure of two. */
export function lessSure(a: Certainty, b: Certainty): Certainty {
  const order: readonly Certainty[] = ["confirmed", "reported", "estimated", "unknown"];
  return order.indexOf(a) >= order.indexOf(b) ? a : b;
}

/** An inner thing must be at least as long as what is round it, or it does not come out at the far end. */
export function reach(inner: Fact<Length>, outer: Fact<Length>): Reach {
  if (inner.certainty === "unknown" || outer.certainty === "unknown") {
    const missing = [
      ...(inner.certainty === "unknown" ? (["inner"] as const) : []),
      ...(outer.certainty === "unknown" ? (["outer"] as const) : []),
    ];
    return { verdict: "cannot tell", missing };
  }
  const enough = inner.value >= outer.value;
  const by = Math.abs(inner.value - outer.value) as Length;
  const says = enough ? "long enough" : "too short";
  const certainty = lessSure(inner.certainty, outer.certainty);
  return certainty === "reported" || certainty === "estimated"
    ? { verdict: "doubt", of: says, by, certainty }
    : { verdict: says, by };
}
