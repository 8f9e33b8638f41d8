import type { EventKind } from "#shared/tube/payloads.ts";

/** What an event changes: a save conflicts only with a later event on the same tube that touches the same. */
export type Aspect =
  | "clock"
  | "status"
  | "mode"
  | "facts"
  | "plan"
  | "owner"
  | "conditions"
  | "history"
  | "visit"
  | "call";

export type EventRule = {
  readonly touches: readonly Aspect[];
  /** Which clocks start. A check, a flush, a reposition or a cap resets neither. */
  readonly resets: "catheter" | "both" | "neither";
  /** True when the event stores the protocol and calendar versions that its dates come from. */
  readonly pins: boolean;
  /** How many tubes it names. */
  readonly tubes: 0 | 1 | 2;
};

const adds: EventRule = { touches: [], resets: "neither", pins: false, tubes: 1 };
const renews: EventRule = {
  touches: ["clock", "status", "facts", "plan"],
  resets: "catheter",
  pins: true,
  tubes: 1,
};

export const eventRules = {
  placed: { touches: ["clock", "status"], resets: "both", pins: true, tubes: 1 },
  "taken over": { touches: ["clock", "status"], resets: "both", pins: true, tubes: 1 },
  checked: adds,
  exchanged: renews,
  upsized: renews,
  downsized: renews,
  salvaged: renews,
  "new puncture": { ...renews, resets: "both" },
  capped: { ...adds, touches: ["mode"] },
  uncapped: { ...adds, touches: ["mode"] },
  "tip position": adds,
  "partly dislodged": { ...adds, touches: ["status"] },
  "fell out": { ...adds, touches: ["status"] },
  "not replaced": { ...adds, touches: ["status"] },
  converted: { touches: ["clock", "status", "facts", "mode"], resets: "catheter", pins: true, tubes: 2 },
  removed: { ...adds, touches: ["status"] },
  died: { touches: ["status", "conditions"], resets: "neither", pins: false, tubes: 0 },
  "facts noted": { ...adds, touches: ["facts", "mode"] },
  verified: { ...adds, touches: ["history"] },
  "clock dated": { touches: ["clock"], resets: "neither", pins: true, tubes: 1 },
  "plan recorded": { ...adds, touches: ["plan"] },
  "exchange planned": { ...adds, touches: ["plan"] },
  "conditions noted": { touches: ["conditions"], resets: "neither", pins: false, tubes: 0 },
  "step assigned": { ...adds, touches: ["owner"] },
  called: adds,
  "dates confirmed": { ...adds, touches: ["clock"], pins: true },
  amended: { touches: ["history"], resets: "neither", pins: false, tubes: 0 },
  voided: { touches: ["history"], resets: "neither", pins: false, tubes: 0 },
  repositioned: { ...adds, touches: ["status"] },
  flushed: adds,
  unblocked: adds,
  "clamp trial started": { ...adds, touches: ["mode"] },
  "clamp trial passed": { ...adds, touches: ["mode"] },
  "clamp trial failed": { ...adds, touches: ["mode"] },
  "suction changed": { ...adds, touches: ["mode"] },
  "balloon checked": adds,
  "anchors removed": { ...adds, touches: ["facts"] },
  blocked: adds,
  leaking: adds,
  infected: adds,
  bled: adds,
  broken: { ...adds, touches: ["status"] },
  "fluid tested": adds,
  "removal decided": { ...adds, touches: ["plan"] },
  "handed over": { ...adds, touches: ["status"] },
  "accepted elsewhere": { ...adds, touches: ["status"] },
  "follow-up ended": { ...adds, touches: ["status"] },
  transferred: adds,
  "hospice decided": { touches: ["conditions"], resets: "neither", pins: false, tubes: 0 },
  "whereabouts noted": { ...adds, tubes: 0 },
  "clinical state noted": { ...adds, tubes: 0 },
  "reconcile asked": { ...adds, tubes: 0 },
  reconciled: { touches: ["facts"], resets: "neither", pins: false, tubes: 0 },
  "reported out": { ...adds, tubes: 0 },
  "records joined": { ...adds, tubes: 0 },
  "review asked": adds,
  "review decided": { ...adds, touches: ["plan"] },
  "decision done": { ...adds, touches: ["plan"] },
  "alarm closed": adds,
  "usual level accepted": adds,
  "visit booked": { touches: ["visit"], resets: "neither", pins: false, tubes: 0 },
  "visit moved": { touches: ["visit"], resets: "neither", pins: false, tubes: 0 },
  "visit noted": { touches: ["visit"], resets: "neither", pins: false, tubes: 0 },
  "visit prepared": { ...adds, tubes: 0 },
  "call attempted": { ...adds, touches: ["call"], tubes: 0 },
  "letter sent": { ...adds, touches: ["call"], tubes: 0 },
  "not reached decided": { ...adds, touches: ["call"], tubes: 0 },
  "red flag raised": { ...adds, tubes: 0 },
  "red flag handed": { ...adds, tubes: 0 },
  "red flag done": { ...adds, tubes: 0 },
  "told of the tube": adds,
} as const satisfies Record<EventKind, EventRule>;

export const eventKinds = Object.keys(eventRules) as EventKind[];

export const ruleOf = (kind: EventKind): EventRule => eventRules[kind];

/** Kinds that open a record; everything else happens to a tube that has one. */
export const opensTube = (kind: EventKind): boolean =>
  kind === "placed" || kind === "taken over" || kind === "converted";

/** Facts found, calls made and conditions learned after the end of a record contradict nothing. */
export const mayFollowEnd = (kind: EventKind): boolean =>
  kind === "facts noted" || kind === "called" || kind === "conditions noted";
