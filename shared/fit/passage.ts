import type { Place, StateConcern, TubeInside } from "#shared/fit/inside.ts";
import type { Length } from "#shared/size/length.ts";
import type { Certainty, Fact } from "#shared/tube/certainty.ts";

/**
 * The clinic's rows for measured bores. Undefined: the clinic has no such row (or none applies, as under 18), and a bore that
 * needs it cannot be judged.
 */
export type PassageRows = {
  readonly clearance: Length | undefined;
  readonly boreTolerance: Length | undefined;
  readonly outsideTolerance: Readonly<Record<GoesAs, Length | undefined>>;
};

/** A wire is stated as it is; of any other device the size is the outside as a package states it. */
export type GoesAs = "wire" | "device";

/** What is to go through. `tolerance` null: not known, so the clinic's row supplies one and the answer says so. */
export type Goes = {
  readonly as: GoesAs;
  readonly outside: Fact<Length>;
  readonly tolerance: Length | null;
};

/** A wire of which only the size is recorded. */
export const wireOf = (outside: Fact<Length>): Goes => ({ as: "wire", outside, tolerance: null });

/** One thing through another. */
export type Passage = {
  readonly goes: Goes;
  readonly inside: TubeInside;
  readonly rows: PassageRows;
};

export type Outcome = "passes" | "does not pass" | "doubt";

/** What goes through against the recorded figure itself, before tolerance and clearance: what a reader can check with two numbers. */
export type Gap =
  | { readonly is: "too thick"; readonly by: Length }
  | { readonly is: "room"; readonly by: Length };

/** The thickest stated outside that is let through, at the worst and at the best that both tolerances allow. */
export type Limits = { readonly least: Length; readonly most: Length };

type Recorded = {
  readonly certainty: Exclude<Certainty, "unknown">;
  /** What the figures alone say, however well they are known. */
  readonly says: Outcome;
};

/** The package says what the tube takes, up to and including; it speaks for the whole path and names no place. */
export type LabelComparison = Recorded & {
  readonly basis: "label";
  readonly limits: Limits;
  readonly gap: Gap;
};

export type BoreComparison = Recorded & {
  readonly basis: "bore";
  readonly place: Place;
  readonly inside: Length;
  readonly tolerance: Length;
  readonly toleranceFrom: "recorded" | "row";
  readonly clearance: Length;
  readonly outsideTolerance: Length;
  readonly outsideToleranceFrom: "recorded" | "row";
  readonly limits: Limits;
  readonly gap: Gap;
};

/** A closed tip lets no wire out, whatever its size. */
export type TipComparison = Recorded & {
  readonly basis: "closed end hole";
  readonly says: "does not pass";
};

export type SizedComparison = LabelComparison | BoreComparison;
export type Comparison = SizedComparison | TipComparison;

/** What is needed before there is an answer. */
export type Missing =
  | { readonly what: "outside" }
  | { readonly what: "takes or bores" }
  | { readonly what: "bore"; readonly place: Place }
  | { readonly what: "clearance row" }
  | { readonly what: "tolerance row" }
  | { readonly what: "outside tolerance row" };

export type DoubtReason =
  | { readonly because: "tolerance" }
  | {
      readonly because: "certainty";
      readonly of: "outside" | Comparison["basis"];
      readonly certainty: "reported" | "estimated";
    };

/**
 * Does it pass by recorded sizes? `decides` is the narrowest fact behind the verdict; `compared` is every fact that was
 * held against it, from the hub to the tip and the label last.
 */
export type BySize =
  | {
      readonly verdict: "passes";
      readonly outside: Length;
      readonly decides: SizedComparison;
      readonly compared: readonly Comparison[];
    }
  | {
      readonly verdict: "does not pass";
      readonly outside: Length;
      readonly decides: Comparison;
      readonly compared: readonly Comparison[];
    }
  | {
      readonly verdict: "doubt";
      readonly outside: Length;
      readonly decides: Comparison;
      readonly reasons: readonly DoubtReason[];
      readonly compared: readonly Comparison[];
    }
  | {
      readonly verdict: "cannot tell";
      readonly missing: readonly Missing[];
      readonly compared: readonly Comparison[];
    };

/** Does the state of the tube speak against it? A line of its own, so that neither hides the other. */
export type ByState =
  | { readonly state: "nothing recorded as present" }
  | { readonly state: "in doubt"; readonly concerns: readonly StateConcern[] }
  | { readonly state: "not recorded" };

export type WirePassage = { readonly bySize: BySize; readonly byState: ByState };
