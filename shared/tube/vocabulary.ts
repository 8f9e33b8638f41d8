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
  "to feed",
  "to irrigate",
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
  "button",
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

/** What is put in to hold a tube at the skin for a time, and taken out again. */
export const skinHolds = ["anchors", "suture"] as const;
export type SkinHold = (typeof skinHolds)[number];

/** Why a kind's own row may be replaced by a shorter one. */
export const factors = ["pregnancy", "stone former", "cancer obstruction"] as const;
export type Factor = (typeof factors)[number];

/** Ways to the gallbladder, on which the age of a tract hangs; typed in the record's line for the route. */
export const routes = ["transhepatic", "transperitoneal"] as const;
export type Route = (typeof routes)[number];

export const callOutcomes = ["reached the patient", "reached a carer", "not reached"] as const;
export type CallOutcome = (typeof callOutcomes)[number];

/** What goes wrong with a tube that is in; each stands as an alarm until somebody has looked. */
export const troubleKinds = ["blocked", "leaking", "infected", "bled", "broken"] as const;
export type TroubleKind = (typeof troubleKinds)[number];

/** What was done about an alarm by whoever closes it. */
export const alarmDones = [
  "flushed and it ran",
  "unkinked",
  "bag changed",
  "tube checked",
  "sent to hospital",
  "seen by a physician",
  "expected",
  "other",
] as const;
export type AlarmDone = (typeof alarmDones)[number];

/** Rows of output for which a clinician can accept another level as usual for one tube. Dry is never usual. */
export const usualRows = ["low", "high"] as const;
export type UsualRow = (typeof usualRows)[number];

/** How a flush went in. */
export const flushWents = ["easily", "hard", "not at all"] as const;
export type FlushWent = (typeof flushWents)[number];

/** What a drain can be set to run to by a change of suction. */
export const suctionModes = [
  "to bag",
  "to bulb",
  "to suction",
  "underwater seal",
  "one-way valve",
] as const satisfies readonly Mode[];

/** What can be asked for after a transfer; each is found once the record knows it. */
export const findOuts = [
  "side",
  "size",
  "what wire it takes",
  "end hole",
  "full length",
  "external length",
  "what holds it",
  "water in the balloon",
  "fixation",
  "flush order",
  "day of the puncture",
  "position of the tip",
] as const;
export type FindOut = (typeof findOuts)[number];

export const whereabouts = ["at home", "inpatient", "elsewhere", "not known"] as const;
export type Whereabouts = (typeof whereabouts)[number];

/** What two reports, or two records, do not agree on. */
export const reconcileAbouts = ["sides", "two records of one patient", "which tube"] as const;
export type ReconcileAbout = (typeof reconcileAbouts)[number];

/** How a patient says that they feel. */
export const feelings = ["well", "unwell", "very unwell"] as const;
export type Feeling = (typeof feelings)[number];

/** What imaging showed of what a tube was put in for. */
export const imagingFindings = [
  "collection gone",
  "smaller",
  "unchanged",
  "larger",
  "lung up",
  "lung not up",
  "other",
] as const;
export type ImagingFinding = (typeof imagingFindings)[number];

/** What a clinician lets go on, or not, in hospice. */
export const goingOn = ["go on", "stop"] as const;
export type GoingOn = (typeof goingOn)[number];
