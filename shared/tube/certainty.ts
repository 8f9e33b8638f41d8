/**
 * How well a fact is known. Own entries are confirmed; what a patient or another hospital says is reported;
 * a typed "~" makes an entry estimated and a typed "?" makes it unknown.
 */
export const certainties = ["confirmed", "reported", "estimated", "unknown"] as const;
export type Certainty = (typeof certainties)[number];

/** A fact with its certainty. `unknown` carries no value, so that nothing can read one from it. */
export type Fact<T> =
  | { readonly certainty: "confirmed" | "reported" | "estimated"; readonly value: T }
  | { readonly certainty: "unknown" };

export const unknownFact: Fact<never> = { certainty: "unknown" };

export const confirmed = <T>(value: T): Fact<T> => ({ certainty: "confirmed", value });

/** The value, or undefined when unknown. Callers must say what they do without one. */
export const known = <T>(fact: Fact<T>): T | undefined =>
  fact.certainty === "unknown" ? undefined : fact.value;
