import { isDay, weekdayOf } from "#shared/day/day.ts";
import { printDay, weekdayNames } from "#shared/day/print-day.ts";
import { type AlarmCode, alarmCodes } from "#shared/output/alarm/reason.ts";
import type { Why, WhyCode } from "#shared/step/step.ts";
import type { ContradictionCode } from "#shared/tube/contradiction-codes.ts";
import { kindOf, tubeKinds } from "#shared/tube/kind/kinds.ts";
import { stepKinds } from "#shared/tube/step-kinds.ts";
import { alarmWhy } from "#shared/words/alarm-why.ts";
import { anchorWhy } from "#shared/words/anchors-out.ts";
import { callWhy } from "#shared/words/call-why.ts";
import { printMinute } from "#shared/words/offers.ts";
import { stepNames } from "#shared/words/steps.ts";

type Args = Why["args"];
type Value = Args[string] | undefined;
type Sentence = (args: Args) => string;

/** A day as people read it; what is no day is told as it stands. */
const on = (value: Value): string =>
  typeof value === "string" && isDay(value) ? printDay(value) : String(value ?? "an unknown day");

const daysOf = (name: string, days: Value): string =>
  days === null || days === undefined ? `${name}: no row` : `${name} ${days}`;

const kindName = (kind: Value): string => {
  const found = tubeKinds.find((name) => name === kind);
  return found === undefined ? "this kind" : kindOf(found).name;
};

const stepName = (step: Value): string => {
  const found = stepKinds.find((name) => name === step);
  return found === undefined ? "this step" : stepNames[found];
};

/** What is said of something, where there is something. */
const said = (value: Value, words: (value: string | number) => string): string =>
  value === null || value === undefined ? "" : words(value);

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function because({ because: code, reason, from }: Args): string {
  switch (code) {
    case "closure":
      return `clinic closed (${reason})`;
    case "closed-weekday":
      return typeof from === "string" && isDay(from)
        ? `the clinic is closed on ${weekdayNames[weekdayOf(from) - 1]}s`
        : "the clinic is closed on that weekday";
    default:
      return "it would lie before the earliest date";
  }
}

function moved(args: Args): string {
  const end = capital(String(args.end));
  if (args.to === null || args.to === undefined)
    return `${end} ${on(args.from)} cannot be moved, no open day is near: ${because(args)}.`;
  return `${end} moved from ${on(args.from)} to ${on(args.to)}: ${because(args)}.`;
}

const contradictions = {
  "event-before-opening": "something is recorded before the tube was placed or taken over",
  "event-after-end": "something is recorded after the tube's record had ended",
  "tube-opened-twice": "the tube is recorded as placed twice",
  "tube-not-opened": "a conversion names a tube that has no record",
  "already-capped": "it was capped while it was capped",
  "not-capped": "it was uncapped while it was not capped",
  "already-out": "something is recorded of a tube that was out",
  "not-out": "it was not replaced while it was still in",
  "fragment-inside": "a piece of it is still inside",
  "no-pins": "the entry names no version of the protocol",
  "already-on-trial": "a clamp trial was started while one was running",
  "not-on-trial": "a clamp trial came out that had not been started",
  "no-balloon": "water was found in a balloon where no balloon holds it",
  "visit-not-booked": "an entry speaks of a visit that is not booked",
  "visit-over": "an entry changes a visit that was over",
  "flag-not-open": "an entry speaks of a red flag that is not open",
} as const satisfies Record<ContradictionCode, string>;

const contradiction = (code: Value): string =>
  Object.entries(contradictions).find(([known]) => known === code)?.[1] ?? "two entries disagree";

const alarmLines = Object.fromEntries(
  alarmCodes.map((code) => [`alarm-${code}`, (args: Args) => alarmWhy(code, args)]),
) as Readonly<Record<`alarm-${AlarmCode}`, Sentence>>;

const sentences = {
  "counted-from": ({ day }) => `Counted from ${on(day)}.`,
  "counted-from-span": ({ earliest, latest }) =>
    `Counted from ${on(earliest)}, the earliest of the days that it may have been (to ${on(latest)}). Provisional.`,
  "date-unknown": () => "The day on which this tube was placed or last exchanged is unknown.",
  "reported-elsewhere": () => "Done elsewhere and not confirmed here yet.",
  row: ({ row, version, earliest, target, latest, source }) =>
    `Row ${row}, version ${version}: ${daysOf("earliest", earliest)}, ${daysOf("target", target)}, ${daysOf("latest", latest)} days (source ${source}).`,
  "age-unknown": () => "The birth date is unknown, and the row is for adults only: find the birth date.",
  "row-example": ({ version }) => `Version ${version} of the protocol is an EXAMPLE: nobody has approved it.`,
  factor: ({ factor }) => `A shorter row stands because of: ${factor}.`,
  plan: ({ act, by, byWhom }) =>
    `The operator's plan stands above the row: ${act} by ${on(by)}${byWhom === null || byWhom === undefined ? "" : `, ${byWhom}`}.`,
  "plan-reason": ({ reason }) => `Reason of the plan: ${reason}.`,
  "plan-past-row-latest": ({ by, latest }) =>
    `The plan's day, ${on(by)}, is past the row's latest, ${on(latest)}.`,
  "operator-date-missing": () => "The row waits for the operator's date and there is none: due now.",
  "counted-from-check": ({ day }) => `Counted from the last check, ${on(day)}.`,
  "no-row": ({ kind }) => `The protocol has no row for ${kindName(kind)}. No row is not zero: ask.`,
  "no-example-for-child": () => "Under 18: the example rows are for adults and none applies. Ask.",
  moved,
  "no-day-left": ({ step }) => `No open day is left in the window of "${stepName(step)}".`,
  "pink-urine": ({ day, hours, source }) =>
    `Pink urine seen on ${on(day)}, under ${hours} h after a procedure: asked again the next day (source ${source}).`,
  "first-call": ({ from, to, day, source }) =>
    `First call on day ${from} to ${to} after ${on(day)} (source ${source}).`,
  "call-attempts": ({ attempts }) =>
    `Called ${attempts} ${attempts === 1 ? "time" : "times"}, not reached yet.`,
  ...callWhy,
  ...anchorWhy,
  "fell-out": () => "The tube fell out, and what follows is not decided.",
  "partly-dislodged": () => "The tube was pulled back and has not been put right.",
  fragment: () => "It did not come out whole: a piece is left inside.",
  "removal-told": () => "Told removed. Nobody here has confirmed it: whole, seen how, by whom.",
  contradiction: ({ code }) => `Two entries cannot both be true: ${contradiction(code)}.`,
  "hard-latest": ({ by, latest }) =>
    `The plan's day, ${on(by)}, is past the row's hard limit, ${on(latest)}.`,
  "row-note": ({ note }) => `The row says: ${note}.`,
  "tract-too-young": ({ act, by, from, days, row }) =>
    `On ${on(by)} the tract is younger than the ${days} days of row ${row} (from ${on(from)}): ${act === "remove" ? "not removed" : "not exchanged"} before.`,
  "tract-age-unknown": ({ days, row }) =>
    `Row ${row} waits for a tract of ${days} days; the day of the puncture is unknown, so it cannot be told.`,
  "removal-decided": ({ by, decidedBy }) => `Removal decided by ${decidedBy}: by ${on(by)}.`,
  "removal-reason": ({ reason }) => `Reason of the removal: ${reason}.`,
  trouble: ({ trouble, level, untilReached }) =>
    `Recorded: ${trouble}. ${capital(String(level ?? "no row: ask now"))}${said(untilReached, (act) => `. Until reached: ${act}`)}.`,
  "balloon-loss": ({ loss, over }) =>
    `${loss} mL less than last filled, over ${over} mL: is the balloon losing water?`,
  "balloon-loss-unknown": () => "How much water was lost cannot be told: one of the two volumes is unknown.",
  "balloon-losses": ({ losses, over, source }) =>
    `Water lost at the last checks: ${losses} mL, each over ${over} mL (source ${source}).`,
  "balloon-row": ({ from, to, every, source }) =>
    `Balloon water: first check on day ${from} to ${to}, then every ${every} days (source ${source}).`,
  "balloon-last-check": ({ day }) => `Last checked ${on(day)}.`,
  "trial-running": ({ days, day, source }) =>
    `Clamp trial since ${on(day)}: calls on days ${days} (source ${source}), closed days too. The exchange date stands.`,
  "trial-closed-day": ({ day, covers, asks }) =>
    `The clinic is closed on ${on(day)}: ${said(covers, (who) => `covered by ${who}.`) || asks}`,
  "trial-undated": () => "A clamp trial runs, and there is no row or no known day to count its calls from.",
  "trial-passed": () => "The clamp trial was passed: decide what follows.",
  "trial-failed": () => "The clamp trial failed: decide what follows.",
  decided: ({ by, decidedBy }) => `Decided in review by ${decidedBy}: by ${on(by)}.`,
  "decided-words": ({ words }) => `In the physician's words: ${words}.`,
  reviewed: ({ day }) => `Counted from the review of ${on(day)}.`,
  "review-on": ({ day }) => `The last review set the next one on ${on(day)}.`,
  "review-asked": ({ askedBy, reason }) =>
    `A review was asked for${said(askedBy, (who) => ` by ${who}`)}${said(reason, (words) => `: ${words}`)}.`,
  "evidence-changed": ({ day, decidedBy, gone, other }) =>
    `Look at the decision of ${decidedBy} (recorded ${on(day)}) again: of the readings that it rested on ${gone} stand no more as they were seen, ${other} of that time came since.`,
  "tip-to-confirm": ({ day, days, source }) =>
    `The tip is to be confirmed ${days === 0 ? "on" : `within ${days} days of`} ${on(day)} (source ${source}). Its date is its own.`,
  "tip-not-in-place": () => "The tip was seen and is not in place.",
  "handed-over": ({ to, person }) =>
    `Handed over to ${to}${said(person, (who) => `, ${who} asked`)}. No named person has accepted it.`,
  "to-find-out": ({ what, askWhom }) =>
    `To be found out after the transfer: ${what}${said(askWhom, (who) => `; ask ${who}`)}.`,
  gap: ({ what }) => `Not known: ${what}.`,
  "insides-unknown": ({ on: day, days, source }) =>
    `An exchange is planned for ${on(day)}, and neither what wire the tube in place takes nor every inside that a wire meets is known: to be found out from ${days} days before (source ${source}).`,
  "birth-date-unknown": () =>
    "The birth date is not known. Rows for adults are used, provisionally, and one identifier is missing.",
  "hospice-undecided": () =>
    "In hospice, and no clinician has decided what goes on. Until then everything does.",
  "hospice-decided": ({ until, calls, exchanges, decidedBy, team }) =>
    `Decided by ${decidedBy} until ${on(until)}: calls ${calls}, exchanges ${exchanges}${said(team, (who) => `, with ${who}`)}.`,
  inpatient: ({ where }) =>
    `An inpatient${said(where, (ward) => ` on ${ward}`)}: the ward is rung about the tube.`,
  whereabouts: ({ where, day, days, ward, source }) =>
    `An inpatient${said(where, (place) => ` on ${place}`)}, told on ${on(day)}: asked again ${days === null ? "now, no row" : `every ${days} days (source ${source})`}${said(ward, (words) => `; ${words}`)}.`,
  reconcile: ({ about, says }) => `Not agreed: ${about}. ${says}`,
  "reported-out": ({ tubes, toldBy, day }) =>
    `Told by ${toldBy} that one was taken out${said(day, (text) => ` on ${on(text)}`)}, and not which: ${tubes}.`,
  ...alarmLines,
  visit: ({ what, day, from, where, state, urgent }) =>
    `${capital(String(state))}${said(where, (place) => ` elsewhere, ${place}`)}: ${what}, ${on(day)}${said(from, (at) => `, ${printMinute(Number(at))}`)}${said(urgent, (word) => `, ${word}`)}.`,
  "to-settle": ({ thing, says, day }) =>
    `Open: ${thing}${said(says, (words) => `, ${words}`)}${said(day, (by) => `; settled by ${on(by)}`)}.`,
  missed: ({ day, reason, times }) =>
    `Nobody came on ${on(day)}${said(reason, (words) => ` (${words})`)}${Number(times) > 1 ? `, ${times} times by now` : ""}. The tube's own date has not waited.`,
  "usual-level": ({ row, mlPer24h, day, acceptedBy }) =>
    `Accepted by ${acceptedBy} as usual until ${on(day)}: ${mlPer24h} mL/24 h, in place of the row for ${row} output.`,
} as const satisfies Record<WhyCode, Sentence>;

/** One line of a step's why, as a sentence. */
export function whySentence({ code, args }: Why): string {
  const tell: Sentence = sentences[code];
  return tell(args);
}
