import type { DecidedKind, Decision } from "#shared/review/decisions.ts";

/** What was decided, named as the act that is asked for. */
export const decidedNames = {
  "flush differently": "Flush differently",
  "to suction": "Put to suction",
  reposition: "Reposition",
  upsize: "Upsize",
  downsize: "Downsize",
  "second drain": "Place a second drain",
  "tube check": "Tube check",
  imaging: "Imaging",
  "fluid tests": "Fluid tests",
  "cap or clamp trial": "Start a cap or clamp trial",
  refer: "Refer",
  "hand over": "Hand over",
} as const satisfies Record<DecidedKind, string>;

/** What is asked of whoever has it. */
export const decidedAsks = {
  "flush differently": "Change the order: note it as a fact of the tube, and tell the patient.",
  "to suction": "Put it to suction and record it.",
  reposition: "Book and record the reposition.",
  upsize: "Plan the exchange, then record the upsize.",
  downsize: "Plan the exchange, then record the downsize.",
  "second drain": "Book it, record the new drain, then record this as done.",
  "tube check": "Book the tube check and record what it shows.",
  imaging: "Book it, note what it shows, then record this as done.",
  "fluid tests": "Send fluid and serum of the same day, and record both.",
  "cap or clamp trial":
    "Ask who covers the nights and whether there is a bag at home, then record the start.",
  refer: "Refer, then record this as done.",
  "hand over": "Hand it over to a named person, and record it.",
} as const satisfies Record<DecidedKind, string>;

/** A decision as it is read in a sentence: "leave in, review on Fri 20 Nov 2026". */
export const decisionWords: Readonly<Record<Decision, string>> = {
  "leave in": "leave in, review on",
  remove: "remove by",
  "flush differently": "flush differently by",
  "to suction": "to suction by",
  reposition: "reposition by",
  upsize: "upsize by",
  downsize: "downsize by",
  "second drain": "second drain by",
  "tube check": "tube check by",
  imaging: "imaging by",
  "fluid tests": "fluid tests by",
  "cap or clamp trial": "cap or clamp trial by",
  refer: "refer by",
  "hand over": "hand over by",
};

/** The same in a list to choose from. */
export const decisionChoices = {
  ...decidedNames,
  "leave in": "Leave in, review on",
  remove: "Remove",
} as const satisfies Record<Decision, string>;
