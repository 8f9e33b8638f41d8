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
};

/** One wire through one tube. */
export type Passage = {
  readonly wire: Fact<Length>;
  readonly inside: TubeInside;
  readonly rows: PassageRows;
};

export type Outcome = "passes" | "does not pass" | "doubt";

/** The wire against the recorded figure itself, before tolerance and clearance: what a reader can check with two numbers. */
export type Gap =
  | { readonly is: "too thick"; readonly by: Length }
  | { readonly is: "room"; readonly by: Length };

/** The thickest wire that is let through, at the worst and at the best that the tolerance allows. */
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
  | { readonly what: "wire size" }
  | { readonly what: "takes or bores" }
  | { readonly what: "bore"; readonly place: Place }
  | { readonly what: "clearance row" }
  | { readonly what: "tolerance row" };

export type DoubtReason =
  | { readonly because: "tolerance" }
  | {
      readonly because: "certainty";
      readonly of: "wire" | Comparison["basis"];
      readonly certainty: "reported" | "estimated";
    };

/**
 * Does the wire pass by recorded sizes? `decides` is the narrowest fact behind the verdict; `compared` is every fact that was
 * held against the wire, from the hub to the tip and the label last.
 */
export type BySize =
  | {
      readonly verdict: "passes";
      readonly wire: Length;
      readonly decides: SizedComparison;
      readonly compared: readonly Comparison[];
    }
  | {
      readonly verdict: "does not pass";
      readonly wire: Length;
      readonly decides: Comparison;
      readonly compared: readonly Comparison[];
    }
  | {
      readonly verdict: "doubt";
      readonly wire: Length;
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
