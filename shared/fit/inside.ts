import type { Length } from "#shared/size/length.ts";
import type { Fact } from "#shared/tube/certainty.ts";

/** Where along a tube an inside can be measured, from the hub to the patient. */
export const places = ["stopcock", "hub", "valve", "shaft", "end hole"] as const;
export type Place = (typeof places)[number];

/** A measured inside at one place. `tolerance` null: not known, so the clinic's row supplies one and the answer says so. */
export type Bore = {
  readonly place: Place;
  readonly inside: Fact<Length>;
  readonly tolerance: Length | null;
};

/**
 * What is recorded of the inside of one tube. French is the outside and never stands here.
 * `takes` is what the package says: a wire up to and including that size; `takesDevice` the same of a tube or other device by its
 * outside, where a package says it.
 */
export type TubeInside = {
  readonly takes: Fact<Length>;
  readonly takesDevice?: Fact<Length>;
  readonly bores: readonly Bore[];
  readonly endHole: Fact<"open" | "closed">;
};

/** What is recorded of the state of the tube in place; absent means nobody has said. */
export const stateConcerns = [
  "crusted",
  "hard to flush",
  "past latest date",
  "string knotted or retained",
  "last exchange difficult",
] as const;
export type StateConcern = (typeof stateConcerns)[number];
