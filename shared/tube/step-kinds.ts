import { decidedKinds } from "#shared/review/decisions.ts";

/** What a step is called where it is stored; the order of urgency stands in shared/step/step.ts. */
export const stepKinds = [
  "tube out",
  "part out",
  "exchange",
  "remove or exchange",
  "remove",
  "review",
  "call",
  "fragment retained",
  "confirm removal",
  "confirm what was done elsewhere",
  "assess the date",
  "no row",
  "no day left",
  "contradiction",
  "alarm",
  "clamp trial",
  "ask again",
  "balloon check",
  "tip position",
  "handover",
  "find out",
  "hospice",
  "whereabouts",
  "reconcile",
  "which tube out",
  "visit",
  "prepare visit",
  "rebook",
  "call back",
  "alternate contact",
  "letter",
  "ask the referrer",
  "not reached",
  "red flag",
  "diary",
  "tell of the tube",
  "anchors out",
  ...decidedKinds,
] as const;
export type StepKind = (typeof stepKinds)[number];

export const ownerRoles = ["nurse", "caller", "physician", "lead"] as const;
export type OwnerRole = (typeof ownerRoles)[number];
