import type { ListLine } from "#app/lists/list-line.ts";
import { type Day, daysBetween } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { answerableIn } from "#shared/step/answerable.ts";
import { isUrgent, type Why } from "#shared/step/step.ts";
import { isUndated } from "#shared/step/undated.ts";
import { stepAsks } from "#shared/words/steps.ts";
import { whySentence } from "#shared/words/why.ts";

/** How loud a line is: needs someone now, cannot be told, or simply comes in its turn. */
export type Weight = "now" | "cannot tell" | "in turn";

export function weightOf({ step, tube }: ListLine, today: Day): Weight {
  if (isUrgent(step.kind) || (step.latest !== null && step.latest < today)) return "now";
  const undated = tube !== null && tube.clockEarliest === null;
  return undated || step.kind === "no row" ? "cannot tell" : "in turn";
}

/** The next date that matters of a window: the target until it has come, then the latest date. A day that nobody set is no target. */
function nextDate(step: ListLine["step"], today: Day): string | null {
  const { target, latest } = step;
  if (isUndated(step)) return "due now until a plan names a date";
  if (target !== null && target >= today) return `target ${printDay(target)}`;
  if (latest !== null) return `latest ${printDay(latest)}`;
  return target === null ? null : `target was ${printDay(target)}`;
}

const daysIn = (days: number): string => (days === 1 ? "1 day in" : `${days} days in`);

function ageIn(tube: ListLine["tube"], today: Day): string | null {
  if (tube === null || tube.clockEarliest === null) return null;
  const most = daysIn(daysBetween(tube.clockEarliest, today));
  return tube.clockEarliest === tube.clockLatest ? most : `up to ${most}`;
}

/** "latest Mon 26 Oct 2026, 84 days in", or the planned day in place of the date. */
function figuresOf({ step, tube }: ListLine, today: Day): string {
  const planned = tube?.plannedOn == null ? null : `planned ${printDay(tube.plannedOn)}`;
  return [planned ?? nextDate(step, today), ageIn(tube, today)]
    .filter((figure) => figure !== null)
    .join(", ");
}

const whyOf = ({ why }: ListLine["step"], ...codes: readonly Why["code"][]): string =>
  why
    .filter(({ code }) => codes.includes(code))
    .map(whySentence)
    .join(" ");

/** The first reason of an alarm, and how many more there are. */
function reasonsInShort(lines: readonly Why[]): string {
  const reasons = answerableIn(lines);
  const more = reasons.length > 1 ? [`${reasons.length - 1} more on the tube's page.`] : [];
  return [...reasons.slice(0, 1).map(({ line }) => whySentence(line)), ...more].join(" ");
}

/** What is to be settled before a visit, by name: what each asks for stands on the visit's page. */
const openThings = ({ why }: ListLine["step"]): string =>
  `open: ${why.flatMap(({ code, args }) => (code === "to-settle" ? [args.thing] : [])).join(", ")}`;

/** What stands behind a line's sentence: the figures of a dated step, how often somebody rang, else what is asked for. */
export function behind(line: ListLine, today: Day): string {
  const { step } = line;
  switch (step.kind) {
    case "exchange":
    case "remove or exchange":
    case "remove":
    case "review":
      return figuresOf(line, today);
    case "assess the date":
      return "due now until its date is known";
    case "no row":
      return "due now until a plan names a date";
    case "call":
      return whyOf(step, "call-attempts") || whyOf(step, "first-call");
    case "visit":
      return whyOf(step, "visit") || stepAsks[step.kind];
    case "prepare visit":
      return openThings(step);
    case "rebook":
      return whyOf(step, "missed") || stepAsks[step.kind];
    case "contradiction":
      return whyOf(step, "contradiction");
    case "handover":
    case "find out":
    case "hospice":
    case "whereabouts":
    case "reconcile":
    case "which tube out":
      return step.why.map(whySentence).join(" ");
    case "alarm":
      return reasonsInShort(step.why);
    default:
      return stepAsks[step.kind];
  }
}
