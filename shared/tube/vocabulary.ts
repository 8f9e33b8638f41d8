/** The trade's words for what a tube is for and how it is set. Every rule is keyed on role and mode. */

export const roles = [
  "collection",
  "drains an organ",
  "air and fluid",
  "intermittent",
  "internal",
  "feeding",
  "venting",
  "irrigation access",
] as const;
export type Role = (typeof roles)[number];

export const modes = [
  "to bag",
  "to bulb",
  "to suction",
  "underwater seal",
  "one-way valve",
  "stoma pouch",
  "capped",
  "clamped",
  "on a clamp trial",
  "internal",
] as const;
export type Mode = (typeof modes)[number];

/** Side is always a word. `not sided` is for a tube in no paired organ; an unknown side is an unknown fact. */
export const sides = ["left", "right", "midline", "transplant", "not sided"] as const;
export type Side = (typeof sides)[number];

export const retentions = [
  "locking loop",
  "two loops",
  "loop",
  "balloon",
  "bumper",
  "external disc",
  "cuff",
  "flaps",
  "suture",
  "none",
] as const;
export type Retention = (typeof retentions)[number];

export const characters = [
  "serous",
  "serosanguineous",
  "bloody",
  "purulent",
  "bilious",
  "feculent",
  "chylous",
  "clear",
  "urine-like",
  "food",
  "debris",
  "clots",
] as const;
export type Character = (typeof characters)[number];

/** Why a kind's own row may be replaced by a shorter one. */
export const factors = ["pregnancy", "stone former", "cancer obstruction"] as const;
export type Factor = (typeof factors)[number];

export const callOutcomes = ["reached the patient", "reached a carer", "not reached"] as const;
export type CallOutcome = (typeof callOutcomes)[number];
