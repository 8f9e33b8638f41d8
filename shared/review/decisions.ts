import type { StepKind } from "#shared/tube/step-kinds.ts";
import type { Role } from "#shared/tube/vocabulary.ts";

/** What may be decided that is a step of its own until it is done or given up: each is a kind of step. */
export const decidedKinds = [
  "flush differently",
  "to suction",
  "reposition",
  "upsize",
  "downsize",
  "second drain",
  "tube check",
  "imaging",
  "fluid tests",
  "cap or clamp trial",
  "refer",
  "hand over",
] as const;
export type DecidedKind = (typeof decidedKinds)[number];

/** What a physician decides in review, in the trade's words: `leave in` sets the day of the next review, `remove` the day it is out by. */
export const decisions = ["leave in", "remove", ...decidedKinds] as const;
export type Decision = (typeof decisions)[number];

export const isDecidedKind = (what: Decision): what is DecidedKind =>
  what !== "leave in" && what !== "remove";

/** What makes no sense of a tube in that role, as common practice has it; no source. */
const notFor: Readonly<Record<Role, readonly Decision[]>> = {
  collection: [],
  "drains an organ": ["to suction"],
  "air and fluid": [],
  intermittent: ["to suction", "cap or clamp trial"],
  internal: ["flush differently", "to suction", "cap or clamp trial", "fluid tests"],
  feeding: ["to suction", "second drain", "fluid tests"],
  venting: ["to suction", "second drain"],
  "irrigation access": ["to suction", "second drain", "fluid tests"],
};

/** The trade's list for a tube in this role, the likeliest first. */
export const decisionsFor = (role: Role): readonly Decision[] =>
  decisions.filter((what) => !notFor[role].includes(what));

/** What a decision may close beside what it opens: a review that was due, and what was decided before. Never an exchange. */
export const closable = ["review", ...decidedKinds] as const satisfies readonly StepKind[];
export type Closable = (typeof closable)[number];
