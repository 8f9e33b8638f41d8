import type { Day } from "#shared/day/day.ts";
import type { Pins } from "#shared/tube/event.ts";
import type { Owner } from "#shared/tube/state.ts";
import type { OwnerRole, StepKind } from "#shared/tube/step-kinds.ts";

/** Raised whenever the same events, pins and tables would give other steps than before. */
export const RULES_VERSION = 8;

export const whyCodes = [
  "counted-from",
  "counted-from-span",
  "date-unknown",
  "reported-elsewhere",
  "row",
  "row-example",
  "age-unknown",
  "factor",
  "plan",
  "plan-reason",
  "plan-past-row-latest",
  "operator-date-missing",
  "counted-from-check",
  "no-row",
  "no-example-for-child",
  "moved",
  "no-day-left",
  "first-call",
  "call-attempts",
  "collection-call",
  "exchange-call",
  "missed-call",
  "discharge-call",
  "trial-call",
  "removal-call",
  "of-tube",
  "next-try",
  "call-again",
  "wrong-number",
  "red-flag",
  "flag-not-handed",
  "flag-handed",
  "diary-missing",
  "not-told",
  "pink-urine",
  "fell-out",
  "partly-dislodged",
  "fragment",
  "removal-told",
  "contradiction",
  "hard-latest",
  "row-note",
  "tract-too-young",
  "tract-age-unknown",
  "removal-decided",
  "removal-reason",
  "trouble",
  "balloon-loss",
  "balloon-loss-unknown",
  "balloon-losses",
  "balloon-row",
  "balloon-last-check",
  "anchors-row",
  "held-at-skin",
  "start-unknown",
  "trial-running",
  "trial-closed-day",
  "trial-undated",
  "trial-passed",
  "trial-failed",
  "tip-to-confirm",
  "tip-not-in-place",
  "handed-over",
  "to-find-out",
  "gap",
  "birth-date-unknown",
  "insides-unknown",
  "hospice-undecided",
  "hospice-decided",
  "inpatient",
  "whereabouts",
  "reconcile",
  "reported-out",
  "decided",
  "decided-words",
  "reviewed",
  "review-on",
  "review-asked",
  "evidence-changed",
  "alarm-dry",
  "alarm-low",
  "alarm-high",
  "alarm-sudden-drop",
  "alarm-new-fluid",
  "alarm-session-over-ceiling",
  "alarm-session-symptoms",
  "alarm-session-falling",
  "alarm-breathless",
  "alarm-air-leak",
  "alarm-leak-while-shut",
  "alarm-symptoms-while-shut",
  "alarm-found-while-shut",
  "alarm-soaking-leak",
  "usual-level",
  "visit",
  "to-settle",
  "missed",
] as const;
export type WhyCode = (typeof whyCodes)[number];

/** One line of the arithmetic behind a step: a code, what it quotes, and the event that it rests on. */
export type Why = {
  readonly code: WhyCode;
  readonly args: Readonly<Record<string, string | number | null>>;
  readonly eventId: string | null;
};

/**
 * One thing that somebody has to do. Days are clinic days; null where the row has none. Whether it is due, overdue or with whom
 * today is read by comparing these days with today, never stored.
 */
export type OpenStep = {
  /** `tube:kind`, the same each time it is computed. */
  readonly id: string;
  readonly tubeId: string | null;
  readonly kind: StepKind;
  readonly earliest: Day | null;
  readonly target: Day | null;
  readonly latest: Day | null;
  /** The day that lists sort by: target, else latest, else the day it came up. */
  readonly dueOn: Day;
  /** Counted from a partial or unconfirmed date, or by a row for adults while the birth date is unknown. */
  readonly provisional: boolean;
  readonly owner: Owner;
  readonly ownerFrom: Day | null;
  /** From this day the nurse takes it to a physician. */
  readonly escalatesOn: Day | null;
  /** From this day a physician owns it. */
  readonly physicianOn: Day | null;
  readonly why: readonly Why[];
  readonly pins: Pins;
};

export const defaultOwner = {
  "tube out": "nurse",
  "part out": "nurse",
  exchange: "nurse",
  "remove or exchange": "nurse",
  remove: "nurse",
  review: "physician",
  call: "caller",
  "fragment retained": "physician",
  "confirm removal": "nurse",
  "confirm what was done elsewhere": "nurse",
  "assess the date": "nurse",
  "no row": "physician",
  "no day left": "nurse",
  contradiction: "nurse",
  alarm: "nurse",
  "clamp trial": "caller",
  "ask again": "caller",
  "balloon check": "nurse",
  "tip position": "physician",
  handover: "nurse",
  "find out": "nurse",
  hospice: "physician",
  whereabouts: "caller",
  reconcile: "nurse",
  "which tube out": "nurse",
  visit: "nurse",
  "prepare visit": "nurse",
  rebook: "nurse",
  "call back": "caller",
  "alternate contact": "caller",
  letter: "caller",
  "ask the referrer": "caller",
  "not reached": "physician",
  "red flag": "caller",
  diary: "caller",
  "tell of the tube": "caller",
  "anchors out": "nurse",
  "flush differently": "nurse",
  "to suction": "nurse",
  reposition: "nurse",
  upsize: "nurse",
  downsize: "nurse",
  "second drain": "nurse",
  "tube check": "nurse",
  imaging: "nurse",
  "fluid tests": "nurse",
  "cap or clamp trial": "nurse",
  refer: "nurse",
  "hand over": "nurse",
} as const satisfies Record<StepKind, OwnerRole>;

/** Needs somebody now, whatever the dates of other steps. */
export const urgentKinds: readonly StepKind[] = [
  "red flag",
  "tube out",
  "part out",
  "fragment retained",
  "alarm",
];

/** Something about the record is missing or does not agree; the tube's own dates stand beside it. */
export const looseEndKinds: readonly StepKind[] = [
  "assess the date",
  "confirm what was done elsewhere",
  "confirm removal",
  "no row",
  "no day left",
  "contradiction",
  "tip position",
  "handover",
  "find out",
  "hospice",
  "reconcile",
  "which tube out",
  "tell of the tube",
];

/** The call of a patient, or what follows where nobody was reached: never more than one of these at a time. */
export const callKinds: readonly StepKind[] = [
  "call",
  "call back",
  "alternate contact",
  "letter",
  "ask the referrer",
  "not reached",
];

/** Done between visits, mostly by telephone. */
export const betweenVisits: readonly StepKind[] = [
  ...callKinds,
  "clamp trial",
  "ask again",
  "diary",
  "balloon check",
  "anchors out",
  "whereabouts",
];

/** What a booked visit asks for; the dates of its tubes stand beside it. */
export const visitKinds: readonly StepKind[] = ["visit", "prepare visit", "rebook"];

export const isUrgent = (kind: StepKind): boolean => urgentKinds.includes(kind);
export const isLooseEnd = (kind: StepKind): boolean => looseEndKinds.includes(kind);

/** The total order of steps: what needs somebody now, then by day, then by id. The first is the next step. */
export function compareSteps(a: OpenStep, b: OpenStep): number {
  if (isUrgent(a.kind) !== isUrgent(b.kind)) return isUrgent(a.kind) ? -1 : 1;
  if (a.dueOn !== b.dueOn) return a.dueOn < b.dueOn ? -1 : 1;
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}

/** Who has the step on a day: its owner, then the nurse together with a physician, then the physician. */
export function ownerOn(step: OpenStep, today: Day): Owner & { readonly rung: 0 | 1 | 2 } {
  if (step.physicianOn !== null && today >= step.physicianOn)
    return step.owner.role === "physician"
      ? { ...step.owner, rung: 2 }
      : { role: "physician", staffId: null, rung: 2 };
  if (step.escalatesOn !== null && today >= step.escalatesOn) return { ...step.owner, rung: 1 };
  return { ...step.owner, rung: 0 };
}
