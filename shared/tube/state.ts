import type { CallLog } from "#shared/call/call-log.ts";
import type { DoneFlag, OpenFlag } from "#shared/call/red-flag.ts";
import type { ClinicalState, FoundAt } from "#shared/clinical/clinical-state.ts";
import type { Findings } from "#shared/clinical/findings-schema.ts";
import type { Day } from "#shared/day/day.ts";
import type { When } from "#shared/day/when.ts";
import type { StateConcern, TubeInside } from "#shared/fit/inside.ts";
import type { DecidedKind } from "#shared/review/decisions.ts";
import type { FluidTests } from "#shared/review/newest-tests.ts";
import type { Length } from "#shared/size/length.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import type { ContradictionCode } from "#shared/tube/contradiction-codes.ts";
import type { Pins } from "#shared/tube/event.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import type { Conditions, EventKind, OperatorPlan, Payload } from "#shared/tube/payloads.ts";
import type { OwnerRole, StepKind } from "#shared/tube/step-kinds.ts";
import type {
  Character,
  FindOut,
  Mode,
  Retention,
  Role,
  Side,
  TroubleKind,
} from "#shared/tube/vocabulary.ts";
import type { Visit } from "#shared/visit/visit.ts";

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

/** The entry that something rests on. */
export type RestsOn = { readonly eventId: string; readonly recordedOn: Day };

/** Something that went wrong and that nobody has looked at since. `grave`: by what was said of it, or not known not to be. */
export type Trouble = RestsOn & { readonly kind: TroubleKind; readonly grave: boolean };

/** A trial of doing without: running, or come out one way and not yet answered by a decision. */
export type Trial = RestsOn & {
  readonly state: "running" | "passed" | "failed";
  readonly since: When;
  readonly covers: string | null;
  /** Calls that reached somebody since it began. */
  readonly calls: number;
};

/** Losses of water against the last fill, in mL, since the catheter's clock began; null where one of the two is unknown. */
export type Balloon = RestsOn & { readonly when: When; readonly lossesMl: readonly (number | null)[] };

/** What is found of a patient that bears on whether a shut tube is borne. */
export type FoundWhileShut = FoundAt & {
  readonly findings: Pick<Findings, "temperature" | "chills" | "feels" | "pain" | "jaundice">;
};

/** A time in which a tube was shut and something was found of the patient, in order. `over`: it was opened again. */
export type ShutSpell = { readonly over: boolean; readonly found: readonly FoundWhileShut[] };

export type LastReview = RestsOn &
  Pick<Payload<"review decided">, "decidedBy" | "evidence"> & { readonly when: When };

export type Decided = RestsOn & {
  readonly what: DecidedKind;
  readonly by: Day;
  readonly decidedBy: string;
  readonly words: string | null;
};
/** A reason of an alarm that somebody answered, with its evidence up to then; null where the key stands for all of it. */
export type AnsweredReason = Payload<"alarm closed">["answers"][number];

/** A level that a clinician accepted as usual for this tube, up to a day and on it. */
export type UsualLevel = RestsOn &
  Pick<Payload<"usual level accepted">, "row" | "mlPer24h" | "until" | "acceptedBy">;

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
  /** Calls since the catheter's clock began: the last that reached somebody, or the last attempt while none did. */
  readonly called: {
    readonly eventId: string;
    readonly when: When;
    readonly time: string | null;
    readonly reached: boolean;
    readonly attempts: number;
  } | null;
  /** When somebody told the patient of a tube that lies wholly inside, and in which language. */
  readonly told: (RestsOn & Pick<Payload<"told of the tube">, "whom" | "language">) | null;
  /** True when the last clock start was done here, so that a first call is due. */
  readonly startedHere: boolean;
  readonly owners: Readonly<Partial<Record<StepKind, Owner>>>;
  readonly troubles: readonly Trouble[];
  readonly trial: Trial | null;
  /** What was found of the patient while it was shut. */
  readonly shutSpells: readonly ShutSpell[];
  readonly balloon: Balloon | null;
  /** Under which catheter since the puncture anchors or a suture came out, or were known to be none; null while nobody knows. */
  readonly anchorsOut: "this one" | "an earlier one" | null;
  /** The last reposition since the catheter's clock began. */
  readonly repositioned: (RestsOn & { readonly when: When }) | null;
  readonly removal: (RestsOn & Pick<Payload<"removal decided">, "by" | "decidedBy" | "reason">) | null;
  /** Handed over and accepted by nobody yet. */
  readonly handover: (RestsOn & Pick<Payload<"handed over">, "to" | "person">) | null;
  /** The last decision of a review since the catheter's clock began, and what was seen in it. */
  readonly lastReview: LastReview | null;
  /** When a review that was due was last answered, and the day on which it is to be reviewed again. */
  readonly reviewed: (RestsOn & { readonly when: When; readonly next: Day | null }) | null;
  readonly reviewAsked: (RestsOn & Payload<"review asked">) | null;
  /** What was decided and is not done. */
  readonly decided: readonly Decided[];
  readonly toFindOut:
    | (RestsOn & { readonly what: readonly FindOut[]; readonly askWhom: string | null })
    | null;
  readonly fluidTests: FluidTests;
  /** Reasons of its alarm that somebody answered. */
  readonly answered: readonly AnsweredReason[];
  /** Levels that a clinician accepted as usual for it, the newest of each row. */
  readonly usual: readonly UsualLevel[];
  readonly pins: Pins;
  readonly story: readonly StoryLine[];
};

/** Two entries that cannot both be true. A loose end for a person, never an exception. */
export type Contradiction = {
  readonly code: ContradictionCode;
  readonly eventId: string;
  readonly tubeId: string | null;
  readonly recordedOn: Day;
};

/** Noted as being in hospice, and what a clinician decided of it; until somebody has, that is asked. */
export type Hospice = RestsOn & {
  readonly decision:
    | (RestsOn & Pick<Payload<"hospice decided">, "decidedBy" | "until" | "calls" | "exchanges" | "team">)
    | null;
};

/** Told that one of these tubes was taken out, and not which. */
export type ReportedOut = RestsOn &
  Pick<Payload<"reported out">, "candidates" | "toldBy"> & { readonly when: When };

export type PatientTubes = {
  readonly conditions: Conditions;
  readonly clinical: ClinicalState;
  readonly hospice: Hospice | null;
  readonly whereabouts:
    | (RestsOn &
        Pick<Payload<"whereabouts noted">, "place" | "where"> & {
          readonly when: When;
          /** Home again from a hospital. */
          readonly discharged: boolean;
        })
    | null;
  readonly reconciles: readonly (RestsOn & Pick<Payload<"reconcile asked">, "about" | "says">)[];
  /** Reports that nobody has answered yet. */
  readonly reportedOut: readonly ReportedOut[];
  /** Every visit that was booked, in the order of booking. */
  readonly visits: readonly Visit[];
  /** What was tried to reach the patient. */
  readonly calls: CallLog;
  /** Red flags of which nobody has recorded what was done, in the order in which they were raised. */
  readonly redFlags: readonly OpenFlag[];
  readonly flagsDone: readonly DoneFlag[];
  readonly died: { readonly eventId: string; readonly when: When } | null;
  readonly tubes: readonly TubeState[];
  readonly contradictions: readonly Contradiction[];
  readonly lastSeq: number;
};
