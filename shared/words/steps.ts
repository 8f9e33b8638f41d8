import { type Day, daysBetween } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { OpenStep } from "#shared/step/step.ts";
import type { OwnerRole, StepKind } from "#shared/tube/step-kinds.ts";

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
} as const satisfies Record<StepKind, string>;

/** Who owns a step, by its rung: 0 alone, 1 together with a physician, 2 a physician. */
const ownerNames = {
  nurse: ["scheduling nurse", "scheduling nurse, asks a physician", "physician"],
  caller: ["caller", "caller, asks a physician", "physician"],
  physician: ["physician", "physician", "physician"],
  lead: ["lead", "lead, asks a physician", "physician"],
} as const satisfies Record<OwnerRole, readonly [string, string, string]>;

export const ownerWords = ({ role, rung }: { readonly role: OwnerRole; readonly rung: 0 | 1 | 2 }): string =>
  ownerNames[role][rung];

const days = (count: number): string => `${count} ${count === 1 ? "day" : "days"}`;

/** What the days are counted to, where that is not the exchange itself. */
const subjects: Partial<Record<StepKind, string>> = {
  "remove or exchange": "removal or exchange",
  remove: "removal",
  review: "review",
  call: "call",
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

/** Where a step stands, beside its name. */
export function standingBesideName(step: OpenStep, today: Day): string {
  switch (step.kind) {
    case "remove or exchange":
      return operatorsDateStanding(step, today);
    case "exchange":
    case "remove":
    case "review":
    case "call":
      return windowStanding(step, today) + (step.provisional ? ", provisional" : "");
    case "tube out":
      return `out since ${printDay(step.dueOn)}: not decided`;
    case "part out":
      return `partly out since ${printDay(step.dueOn)}: not decided`;
    case "fragment retained":
      return `fragment retained since ${printDay(step.dueOn)}: not decided`;
    case "confirm removal":
      return "told removed, not confirmed";
    case "confirm what was done elsewhere":
      return "done elsewhere, not confirmed";
    case "assess the date":
      return dateStanding(step);
    case "no row":
      return "cannot tell: the protocol has no row";
    case "no day left":
      return "no open day left in the window";
    case "contradiction":
      return "two entries cannot both be true";
  }
}

/** The one plain sentence that stands beside the dwell strip, where the step is not named. */
export const stepStanding = (step: OpenStep, today: Day): string =>
  [subjects[step.kind], standingBesideName(step, today)].filter(Boolean).join(" ");
