import type { When } from "#shared/day/when.ts";
import type { Concentration } from "#shared/review/concentration.ts";
import { definitionOf } from "#shared/review/definitions.ts";
import type { TestValue } from "#shared/review/fluid-test-schema.ts";
import type { FluidTest } from "#shared/review/newest-tests.ts";
import type { Fact } from "#shared/tube/certainty.ts";

/** One value over another, unreduced, so that it compares exactly. */
export type Ratio = { readonly over: Concentration; readonly under: Concentration };

/** Known, however well. */
export type KnownFact<T> = Exclude<Fact<T>, { readonly certainty: "unknown" }>;

/** Which value cannot be used, and why. */
export type Missing =
  | {
      readonly of: "fluid" | "serum" | "upper limit";
      readonly why: "not recorded" | "unknown" | "unit unknown" | "zero";
    }
  | { readonly of: "serum"; readonly why: "another day" | "day unknown" };

/** What stands beside the published definition. It says what is, never what that means. */
export type FluidAnswer =
  | {
      readonly kind: "ratio";
      readonly to: "serum" | "upper limit";
      /** The published number of times, for whoever prints the ratio beside it; of a level, the published one. */
      readonly beside: number;
      readonly ratio: KnownFact<Ratio>;
    }
  | { readonly kind: "level"; readonly beside: Concentration; readonly level: KnownFact<Concentration> }
  | { readonly kind: "cannot tell"; readonly missing: Missing };

type Usable =
  | { readonly ok: true; readonly level: KnownFact<Concentration> }
  | { readonly ok: false; readonly missing: Missing };

const lacking = (
  of: "fluid" | "serum" | "upper limit",
  why: "not recorded" | "unknown" | "unit unknown" | "zero",
) => ({ ok: false, missing: { of, why } }) as const;

function usable(of: "fluid" | "serum" | "upper limit", fact: Fact<TestValue> | null): Usable {
  if (fact === null) return lacking(of, "not recorded");
  if (fact.certainty === "unknown") return lacking(of, "unknown");
  const { level } = fact.value;
  if (level === null) return lacking(of, "unit unknown");
  if (level === 0 && of !== "fluid") return lacking(of, "zero");
  return { ok: true, level: { certainty: fact.certainty, value: level } };
}

/** Whether two dates are one day: certain only where both are known to the day, or cannot meet. */
function oneDay(one: When, other: When): "yes" | "no" | "unknown" {
  if (one.precision === "unknown" || other.precision === "unknown") return "unknown";
  if (one.latest < other.earliest || other.latest < one.earliest) return "no";
  return one.precision === "day" && other.precision === "day" ? "yes" : "unknown";
}

/** The serum that makes a pair with the fluid: one of the same day. */
function serumOfTheDay({ serum, serumOn, when }: FluidTest): Usable {
  const used = usable("serum", serum);
  if (!used.ok || serumOn === null) return used;
  const same = oneDay(when, serumOn);
  if (same === "yes") return used;
  return { ok: false, missing: { of: "serum", why: same === "no" ? "another day" : "day unknown" } };
}

/** Two facts together are known as well as the less certain one: an estimate before a report, a report before what was seen. */
function together(one: KnownFact<unknown>, other: KnownFact<unknown>): KnownFact<unknown>["certainty"] {
  for (const certainty of ["estimated", "reported"] as const)
    if (one.certainty === certainty || other.certainty === certainty) return certainty;
  return "confirmed";
}

/**
 * The value in the fluid as its published definition looks at it: over serum of the same day, over the upper limit of the laboratory's serum range,
 * or by itself. The first thing that is missing is named; nothing is concluded.
 */
export function fluidAnswer(test: FluidTest): FluidAnswer {
  const fluid = usable("fluid", test.fluid);
  if (!fluid.ok) return { kind: "cannot tell", missing: fluid.missing };
  const definition = definitionOf(test.analyte);
  if (definition.compares === "itself")
    return { kind: "level", beside: definition.level, level: fluid.level };
  const { compares: to, times: beside } = definition;
  const under = to === "serum" ? serumOfTheDay(test) : usable("upper limit", test.upperLimit);
  if (!under.ok) return { kind: "cannot tell", missing: under.missing };
  const ratio = { over: fluid.level.value, under: under.level.value };
  return {
    kind: "ratio",
    to,
    beside,
    ratio: { certainty: together(fluid.level, under.level), value: ratio },
  };
}
