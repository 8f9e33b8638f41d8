import type { Day } from "#shared/day/day.ts";
import type { When } from "#shared/day/when.ts";
import type { StateConcern, TubeInside } from "#shared/fit/inside.ts";
import type { Length } from "#shared/size/length.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import type { Pins } from "#shared/tube/event.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import type { Conditions, EventKind, OperatorPlan, Payload } from "#shared/tube/payloads.ts";
import type { OwnerRole, StepKind } from "#shared/tube/step-kinds.ts";
import type { Character, Mode, Retention, Role, Side } from "#shared/tube/vocabulary.ts";

/** `ended` is the only status without an open step. */
export const statuses = [
  "in",
  "out, undecided",
  "removal not confirmed",
  "fragment retained",
  "ended",
] as const;
export type Status = (typeof statuses)[number];

/** Catheter age runs from the last exchange, tract age from the puncture. */
export type Clock = { readonly since: When; readonly eventId: string; readonly recordedOn: Day };

export type Owner = { readonly role: OwnerRole; readonly staffId: string | null };

export type Ending = {
  readonly kind: EventKind;
  readonly eventId: string;
  readonly when: When;
  readonly recordedOn: Day;
};

export type StoryLine = {
  readonly eventId: string;
  readonly kind: EventKind;
  readonly when: When;
  readonly time: string | null;
  readonly recordedOn: Day;
  readonly amended: boolean;
};

/** One tube as its events make it: what it is, what is unknown, its two clocks. */
export type TubeState = {
  readonly id: string;
  readonly number: number;
  readonly kind: TubeKind;
  readonly role: Role;
  readonly mode: Mode;
  readonly side: Fact<Side>;
  readonly organ: string | null;
  readonly route: string | null;
  readonly cavity: string | null;
  readonly indication: string | null;
  readonly cancerObstruction: Fact<boolean>;
  readonly takenOverFrom: string | null;
  readonly status: Status;
  /** What ended it, or would have if it were whole and confirmed; null while it is in or out undecided. */
  readonly ending: Ending | null;
  readonly size: Fact<Length>;
  readonly inside: TubeInside;
  readonly fullLength: Fact<Length>;
  readonly externalLength: Fact<Length>;
  readonly retention: Fact<Retention>;
  readonly balloonMl: Fact<number>;
  readonly fixation: Fact<string>;
  readonly flushOrder: Fact<string>;
  readonly expectedFluid: readonly Character[];
  readonly concerns: readonly StateConcern[];
  readonly tipConfirmed: { readonly when: When; readonly inPlace: Fact<boolean> } | null;
  readonly catheter: Clock;
  readonly tract: Clock;
  /** The latest day by which a tube is known to have lain in this tract: what an undated puncture is at least as old as. */
  readonly tractBy: Day | null;
  readonly plan: (OperatorPlan & { readonly eventId: string; readonly recordedOn: Day }) | null;
  readonly plannedExchange: (Payload<"exchange planned"> & { readonly eventId: string }) | null;
  /** The last renewal or removal that nobody here saw and nobody has confirmed. */
  readonly unverified: { readonly eventId: string; readonly recordedOn: Day } | null;
  /** The event since which the tube is wholly or partly out; its status says which. */
  readonly dislodged: {
    readonly eventId: string;
    readonly when: When;
    readonly recordedOn: Day;
    readonly part: boolean;
    /** Whether all of it came out; a part out says nothing of this. */
    readonly whole: Fact<boolean>;
  } | null;
  readonly checked: { readonly eventId: string; readonly when: When } | null;
  readonly called: { readonly eventId: string; readonly reached: boolean; readonly attempts: number } | null;
  /** True when the last clock start was done here, so that a first call is due. */
  readonly startedHere: boolean;
  readonly owners: Readonly<Partial<Record<StepKind, Owner>>>;
  readonly pins: Pins;
  readonly story: readonly StoryLine[];
};

export const contradictionCodes = [
  "event-before-opening",
  "event-after-end",
  "tube-opened-twice",
  "tube-not-opened",
  "already-capped",
  "not-capped",
  "already-out",
  "not-out",
  "fragment-inside",
  "no-pins",
] as const;
export type ContradictionCode = (typeof contradictionCodes)[number];

/** Two entries that cannot both be true. A loose end for a person, never an exception. */
export type Contradiction = {
  readonly code: ContradictionCode;
  readonly eventId: string;
  readonly tubeId: string | null;
  readonly recordedOn: Day;
};

export type PatientTubes = {
  readonly conditions: Conditions;
  readonly died: { readonly eventId: string; readonly when: When } | null;
  readonly tubes: readonly TubeState[];
  readonly contradictions: readonly Contradiction[];
  readonly lastSeq: number;
};
