import { type Day, daysBetween } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { OpenStep } from "#shared/step/step.ts";
import type { OwnerRole, StepKind } from "#shared/tube/step-kinds.ts";
import type { Role } from "#shared/tube/vocabulary.ts";
import { decidedAsks, decidedNames } from "#shared/words/decisions.ts";

/** Each kind of step, named as the act that is asked for. */
export const stepNames = {
  "tube out": "Tube out: decide",
  "part out": "Partly out: decide",
  exchange: "Exchange",
  "remove or exchange": "Remove or exchange",
  remove: "Remove",
  review: "Review",
  call: "Call",
  "fragment retained": "Fragment retained: decide",
  "confirm removal": "Confirm the removal",
  "confirm what was done elsewhere": "Confirm what was done elsewhere",
  "assess the date": "Assess the date",
  "no row": "Set a date",
  "no day left": "Find a day",
  contradiction: "Settle two entries",
  alarm: "Alarm: look at it",
  "clamp trial": "Clamp trial",
  "ask again": "Ask again",
  "balloon check": "Check the balloon water",
  "tip position": "Confirm the tip",
  handover: "Handover not accepted",
  "find out": "Find out",
  hospice: "Hospice: decide",
  whereabouts: "Ask where the patient is",
  reconcile: "Reconcile",
  "which tube out": "Find which tube is out",
  visit: "Visit",
  "prepare visit": "Prepare the visit",
  rebook: "Book again",
  "call back": "Call back",
  "alternate contact": "Ring the alternate contact",
  letter: "Send a letter",
  "ask the referrer": "Ask the referrer and the family doctor",
  "not reached": "Not reached: decide",
  "red flag": "Red flag",
  diary: "Ask for the diary",
  "tell of the tube": "Tell the patient of the tube",
  "anchors out": "Take out anchors or sutures",
  ...decidedNames,
} as const satisfies Record<StepKind, string>;

/** What is asked of whoever has the step. */
export const stepAsks = {
  "tube out": "Salvage through the old tract, a new puncture, or not replaced: record which.",
  "part out": "Exchange or reposition it, or record that it fell out.",
  exchange: "Book and record the exchange.",
  "remove or exchange": "Ask the operator which of the two, then record it.",
  remove: "Book and record the removal.",
  review: "Review the tube and say who does what by when.",
  call: "Call and record how it went, also when nobody was reached.",
  "fragment retained": "Decide what is done about the piece left inside.",
  "confirm removal": "Find who saw the tube out, whole and with its loop released.",
  "confirm what was done elsewhere":
    "Read the report or see the tube, then confirm date, size and what it takes.",
  "assess the date": "Find the date of placement or of the last exchange.",
  "no row": "The protocol has no row for this tube: record a plan with a date.",
  "no day left": "No open day lies in the window: book outside it or change the calendar.",
  contradiction: "Look at both entries and mend or void one.",
  alarm: "Reach somebody, look at the tube, and close the alarm with what was done.",
  "clamp trial": "Call, and record how the trial comes out.",
  "ask again": "Call, ask how the urine looks now, and log what was seen.",
  "balloon check": "Draw the water back, record how much was found and what it was refilled to.",
  "tip position": "See where the tip is and record it.",
  handover: "Find a named person who accepts the care. Until then it is yours.",
  "find out": "Ask whoever knows, then note the facts.",
  hospice: "A clinician decides which calls and exchanges go on, with which team, until when.",
  whereabouts: "Ask where the patient is, and ring the ward about the tube.",
  reconcile: "Find which is right, then record it.",
  "which tube out":
    "Ask whoever took it out which of them it was, then record that removal. Until then the dates of all of them stand.",
  visit: "Record what was done: the visit is done with it. Or that nobody came, or that it is cancelled.",
  "prepare visit": "Settle what is open before the visit, each with who said so.",
  rebook: "Nobody came: find out why and book again. The tube's own date has not waited.",
  "call back": "Call at the time that they asked for, and record how it went.",
  "alternate contact":
    "Ring whom the patient named, say only what they may be told, and record how it went. Also where nobody is named.",
  letter: "Print the letter, send it and record that it went.",
  "ask the referrer": "Ring or write to both, ask where the patient is, and record it.",
  "not reached": "Decide as a physician how it goes on, and from when the calls go on.",
  "red flag": "Hand it to a named person, then record what was done.",
  diary: "Call and enter what was emptied since, or that no diary is kept.",
  "tell of the tube":
    "Say in their own language that a tube is inside them and by when it is changed or taken out, and record it.",
  "anchors out": "Take them out and record it, or record that there were none, with what holds the tube now.",
  ...decidedAsks,
} as const satisfies Record<StepKind, string>;

/** What a review looks at hangs on what the tube is for: low output asks for it of a collection only. */
export const reviewAsks = {
  collection:
    "Right tube and cavity, patency, the last days of net, flush and character, clinical state, imaging.",
  "drains an organ":
    "Patency, output against the usual level, clinical state. Low output is no sign for removal.",
  "air and fluid": "Air leak first, then volume and the film. Never clamped while it bubbles.",
  intermittent: "Volume session by session, symptoms, the cuff and the site.",
  internal: "The date, symptoms, and whether it is still needed.",
  feeding: "Site, fixation, what holds it, whether it is still needed. Output is no measure.",
  venting: "Patency, symptoms, output against the usual level. Low output is no sign for removal.",
  "irrigation access": "Site, how the irrigation runs. What goes in is treatment, not flush.",
} as const satisfies Record<Role, string>;

/** What is asked of whoever has the step, said for the tube's role where that makes a difference. */
export const stepAsksOf = (kind: StepKind, role: Role | null): string =>
  kind === "review" && role !== null ? `${stepAsks.review} ${reviewAsks[role]}` : stepAsks[kind];

/** Who owns a step, by its rung: 0 alone, 1 together with a physician, 2 a physician. */
const ownerNames = {
  nurse: ["scheduling nurse", "scheduling nurse, asks a physician", "physician"],
  caller: ["caller", "caller, asks a physician", "physician"],
  physician: ["physician", "physician", "physician"],
  lead: ["lead", "lead, asks a physician", "physician"],
} as const satisfies Record<OwnerRole, readonly [string, string, string]>;

export const ownerWords = ({ role, rung }: { readonly role: OwnerRole; readonly rung: 0 | 1 | 2 }): string =>
  ownerNames[role][rung];

/** The person by name, with whoever stands beside them by then; else the role. */
export function ownerText({
  name,
  ...owner
}: Parameters<typeof ownerWords>[0] & { readonly name: string | null }): string {
  if (name === null || owner.rung === 2) return ownerWords(owner);
  return owner.rung === 1 ? `${name}, asks a physician` : name;
}

const days = (count: number): string => `${count} ${count === 1 ? "day" : "days"}`;

/** What the days are counted to, where that is not the exchange itself. */
const subjects: Partial<Record<StepKind, string>> = {
  "remove or exchange": "removal or exchange",
  remove: "removal",
  review: "review",
  call: "call",
  "call back": "call back",
  "alternate contact": "alternate contact",
  letter: "letter",
  "ask the referrer": "referrer and family doctor",
  "not reached": "decision, not reached",
  diary: "diary",
  "clamp trial": "call of the trial",
  "ask again": "call to ask again",
  "balloon check": "balloon check",
  "anchors out": "anchors or sutures out",
  "tip position": "tip to confirm",
  hospice: "decision on hospice",
  whereabouts: "asked again",
  visit: "visit",
  "prepare visit": "to be settled",
};

/** Where a step with a window stands: past latest, past its target, due, window open, or still to come. */
function windowStanding({ earliest, latest, dueOn }: OpenStep, today: Day): string {
  const toDue = daysBetween(today, dueOn);
  const tail = latest === null ? "" : `, latest ${inDays(daysBetween(today, latest))}`;
  if (latest !== null && today > latest) return `${days(daysBetween(latest, today))} past latest`;
  if (toDue === 0) return dueOn === latest ? "due today, the latest date" : "due today";
  if (toDue < 0) return `${days(-toDue)} past target${tail}`;
  if (earliest !== null && today >= earliest) return `window open${tail}`;
  return inDays(toDue);
}

const inDays = (count: number): string => {
  if (count === 0) return "today";
  return count === 1 ? "tomorrow" : `in ${days(count)}`;
};

/** Without the operator's date it is due now, whenever that was found; the row's ceiling stands. */
function operatorsDateStanding(step: OpenStep, today: Day): string {
  const { latest } = step;
  if (latest !== null && today > latest) return windowStanding(step, today);
  return `due now: no operator's date${latest === null ? "" : `, latest ${inDays(daysBetween(today, latest))}`}`;
}

const dateStanding = (step: OpenStep): string =>
  step.why.some(({ code }) => code === "date-unknown")
    ? "cannot tell: placement date unknown"
    : "placement date only roughly known: assess it";

type Standing = (step: OpenStep, today: Day) => string;

const unsureWindow: Standing = (step, today) =>
  windowStanding(step, today) + (step.provisional ? ", provisional" : "");
const since =
  (what: string, then: string): Standing =>
  ({ dueOn }) =>
    `${what} ${printDay(dueOn)}: ${then}`;
const says =
  (words: string): Standing =>
  () =>
    words;

const standings: Readonly<Record<StepKind, Standing>> = {
  exchange: unsureWindow,
  "remove or exchange": operatorsDateStanding,
  remove: unsureWindow,
  review: unsureWindow,
  call: unsureWindow,
  "balloon check": unsureWindow,
  "anchors out": unsureWindow,
  "tip position": unsureWindow,
  "clamp trial": windowStanding,
  "call back": windowStanding,
  "alternate contact": windowStanding,
  letter: windowStanding,
  "ask the referrer": windowStanding,
  "not reached": windowStanding,
  diary: windowStanding,
  "ask again": windowStanding,
  hospice: windowStanding,
  whereabouts: windowStanding,
  "flush differently": windowStanding,
  "to suction": windowStanding,
  reposition: windowStanding,
  upsize: windowStanding,
  downsize: windowStanding,
  "second drain": windowStanding,
  "tube check": windowStanding,
  imaging: windowStanding,
  "fluid tests": windowStanding,
  "cap or clamp trial": windowStanding,
  refer: windowStanding,
  "hand over": windowStanding,
  visit: windowStanding,
  "prepare visit": windowStanding,
  rebook: says("did not attend: not booked again"),
  "tube out": since("out since", "not decided"),
  "part out": since("partly out since", "not decided"),
  "fragment retained": since("fragment retained since", "not decided"),
  "confirm removal": says("told removed, not confirmed"),
  "confirm what was done elsewhere": says("done elsewhere, not confirmed"),
  "assess the date": dateStanding,
  "no row": says("cannot tell: the protocol has no row"),
  "no day left": says("no open day left in the window"),
  contradiction: says("two entries cannot both be true"),
  alarm: since("alarm since", "nobody has closed it yet"),
  handover: says("handed over, accepted by nobody yet"),
  "find out": says("something is still to be found out"),
  reconcile: says("two reports do not agree"),
  "which tube out": says("one of several is reported out, not which"),
  "red flag": ({ why }) =>
    why.some(({ code }) => code === "flag-not-handed")
      ? "handed to nobody yet"
      : "handed, what was done is not recorded",
  "tell of the tube": says("by this record the patient was not told"),
};

/** Where a step stands, beside its name. */
export const standingBesideName: Standing = (step, today) => standings[step.kind](step, today);

/** The one plain sentence that stands beside the dwell strip, where the step is not named. */
export const stepStanding = (step: OpenStep, today: Day): string =>
  [subjects[step.kind], standingBesideName(step, today)].filter(Boolean).join(" ");
