import type { Zone } from "#shared/day/instant.ts";
import { printDay, printInstant, printWhen } from "#shared/day/print-day.ts";
import type {
  BesideReason,
  Criterion,
  CriterionKind,
  CriterionReason,
  CriterionRow,
  DayFault,
  LackingRow,
  SessionFault,
} from "#shared/output/criterion/criterion.ts";
import type { Plateau } from "#shared/output/criterion/plateau.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import { andList } from "#shared/words/and-list.ts";
import { findingNames } from "#shared/words/clinical.ts";

/** Stands with every verdict: the number is one part of a review. */
export const onlyTheNumber = "Meeting a number means only that: check patency, patient and imaging.";

const kindWords = {
  "numeric part met": "Numeric part met",
  "not met": "Numeric part not met",
  "cannot tell": "Cannot tell",
  "does not apply": "Does not apply",
} as const satisfies Record<CriterionKind, string>;

const faultWords = {
  "volume-unknown": "a volume is unknown",
  "flush-not-recorded": "flush is ordered and was not recorded",
  "flush-withdrawn-not-recorded": "flush drawn back was not recorded",
  overlap: "two readings claim the same time",
  "no-reading": "no entry",
  gap: "readings cover only part of it",
  "part-of-a-day": "only part of a day",
  "day-in-progress": "not over",
  "procedure-aspirate": "what was drawn off at a procedure falls on it",
  "flush-does-not-come-back": "the flush does not come back",
  "leak-round-tube": "it leaks round the tube",
  estimated: "estimated",
  reported: "told, not seen",
  "already-net": "entered as net",
  "other-fluid-went-in": "other fluid went in",
  "symptoms-not-recorded": "symptoms not recorded",
} as const satisfies Record<DayFault | SessionFault, string>;

const lackingWords = {
  "for a child": "the table is for adults, ask",
  "for this kind": "the table has no row by volume for this kind",
  "age of the last complete day": "the table has no row for how old the last complete day may be",
  "age of the clinical state": "the table has no row for how old the clinical state may be",
  fever: "the table has no row for the temperature of a fever",
} as const satisfies Record<LackingRow, string>;

/** What began a count anew, in the past. */
const begunWords: Partial<Record<EventKind, string>> = {
  placed: "placed",
  converted: "converted",
  exchanged: "exchanged",
  upsized: "upsized",
  downsized: "downsized",
  salvaged: "salvaged through the old tract",
  "new puncture": "replaced by a new puncture",
  capped: "capped",
  uncapped: "uncapped",
  "clamp trial started": "clamp trial started",
  "clamp trial passed": "clamp trial passed",
  "clamp trial failed": "clamp trial failed",
  "suction changed": "suction changed",
  repositioned: "repositioned",
  "partly dislodged": "pulled back",
  "fell out": "fell out",
  removed: "removed",
  "not replaced": "not replaced",
};

const round = (value: number): number => Math.round(value * 10) / 10;
const rate = (mlPer24h: number): string => `${round(mlPer24h)} mL/24 h`;
const faults = (list: readonly (DayFault | SessionFault)[]): string =>
  andList(list.map((fault) => faultWords[fault]));

const numberWords = ["no", "one", "two", "three", "four", "five", "six"];
const count = (figure: number, one: string, many: string): string =>
  `${numberWords[figure] ?? figure} ${figure === 1 ? one : many}`;

type TooFew = Extract<CriterionReason, { readonly code: "too-few-days" | "too-few-sessions" }>;

function tooFew({ code, since, tube, count: found, needed }: TooFew): string {
  const counted =
    code === "too-few-days"
      ? count(found, "complete day", "complete days")
      : count(found, "session", "sessions");
  if (since === null) return `${counted} of ${needed}`;
  const what = begunWords[since.what] ?? since.what;
  return `${tube === null ? "" : `tube ${tube} `}${what} on ${printWhen(since.when)}, ${counted} since`;
}

type ReasonOf<C extends CriterionReason["code"]> = Extract<CriterionReason, { readonly code: C }>;
type Words = { readonly [C in CriterionReason["code"]]: (reason: ReasonOf<C>, zone: Zone) => string };

const words: Words = {
  "never-by-volume": ({ role }) => `this kind never by volume (${role})`,
  shut: ({ mode }) => `it is ${mode}: a tube that is shut shows zero and means to`,
  "not-in": ({ status }) => `it is not in place (${status})`,
  "no-row": ({ of }) => `no row: ${lackingWords[of]}`,
  "too-few-days": tooFew,
  "too-few-sessions": tooFew,
  "no-complete-day": () => "no complete day",
  "no-session": () => "no session is recorded",
  "last-day-too-old": ({ day, hours }) => `the last complete day was ${printDay(day)}, over ${hours} h ago`,
  "last-session-too-old": ({ at, hours }, zone) =>
    `the last session was ${printInstant(at, zone)}, over ${hours} h ago`,
  "day-low": ({ day, mlPer24h, underMl }) => `${printDay(day)} ${rate(mlPer24h)}, under ${underMl}`,
  "day-not-low": ({ day, mlPer24h, underMl }) => `${printDay(day)} ${rate(mlPer24h)}, not under ${underMl}`,
  "day-unknown": ({ day, faults: list }) => `${printDay(day)}: ${faults(list)}`,
  "change-undated": ({ day }) => `whether a change of the tube came before ${printDay(day)} is not known`,
  "later-reading-unknown": ({ day, faults: list }) => `since then, ${printDay(day)}: ${faults(list)}`,
  "later-reading-over": ({ day, ml, underMl }) =>
    `since then, ${printDay(day)}: already ${round(ml)} mL, not under ${underMl}`,
  "session-low": ({ at, ml, underMl }, zone) => `${printInstant(at, zone)} ${round(ml)} mL, under ${underMl}`,
  "session-not-low": ({ at, ml, underMl }, zone) =>
    `session of ${printInstant(at, zone)} ${round(ml)} mL, not under ${underMl}`,
  "session-unknown": ({ at, faults: list }, zone) => `session of ${printInstant(at, zone)}: ${faults(list)}`,
  "session-symptoms": ({ at, symptoms }, zone) =>
    `session of ${printInstant(at, zone)} with ${andList(symptoms)}`,
  "cough-or-breathlessness": ({ when }) => `cough or breathlessness noted ${printWhen(when)}`,
  "cavity-not-recorded": ({ tubes }) =>
    `not recorded whether ${andList(tubes.map((n) => `tube ${n}`))} ${tubes.length === 1 ? "lies" : "lie"} in the same cavity`,
  trouble: ({ trouble, tube }) =>
    `${tube === null ? "" : `tube ${tube} `}recorded as ${trouble}, and nobody has looked since`,
  "clinical-unknown": ({ item }) => `${findingNames[item]} not known`,
  "clinical-too-old": ({ item, when, hours }) =>
    `${findingNames[item]} of ${printWhen(when)}, over ${hours} h old`,
  fever: ({ celsius, when }) => `temperature ${celsius} °C, ${printWhen(when)}`,
  "shaking-chills": ({ when }) => `shaking chills, ${printWhen(when)}`,
  "feels-very-unwell": ({ when }) => `feels very unwell, ${printWhen(when)}`,
  "imaging-against": ({ finding, day }) => `imaging of ${printDay(day)}: collection ${finding}`,
  "air-leak": ({ at }, zone) => `air leak seen ${printInstant(at, zone)}`,
  "air-leak-not-recorded": ({ hours }) => `air leak not recorded for all of ${hours} h`,
  "no-film": () => "no film says whether the lung is up",
  "film-too-old": ({ day, hours }) => `the film of ${printDay(day)} is over ${hours} h old`,
  "lung-not-up": ({ day }) => `lung not up on the film of ${printDay(day)}`,
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** One reason, without a full stop: "upsized on Sat 14 Nov 2026, one complete day since". */
export function reasonWords(reason: CriterionReason, zone: Zone): string {
  // The table holds for each code the words of that code.
  const say = words[reason.code] as (of: CriterionReason, zone: Zone) => string;
  return say(reason, zone);
}

/** Verdict and first reason: "Numeric part not met: upsized on Sat 14 Nov 2026, one complete day since." */
export function verdictSentence({ kind, because }: Criterion, zone: Zone): string {
  const [first] = because;
  const reason = first === undefined ? "" : `: ${reasonWords(first, zone)}`;
  return `${kindWords[kind]}${reason}.`;
}

/** The verdict as it is told anywhere: never without what it means. */
export const criterionSentence = (criterion: Criterion, zone: Zone): string =>
  `${verdictSentence(criterion, zone)} ${onlyTheNumber}`;

export const reasonSentence = (reason: CriterionReason, zone: Zone): string =>
  `${capital(reasonWords(reason, zone))}.`;

/** What stands beside the verdict and changes none. */
export function besideSentence(reason: BesideReason): string {
  switch (reason.code) {
    case "cavity-sum":
      return `The sum of ${reason.tubes.length} tubes of one cavity (${andList(reason.tubes.map((n) => `tube ${n}`))}); a day counts where it is complete for each.`;
    case "cavity-shut":
      return `Shut in the same cavity, and not in the sum: ${andList(reason.tubes.map((n) => `tube ${n}`))}.`;
    case "tract-too-young":
      return `Another row: not removed before a tract age of ${reason.days} days, on ${printDay(reason.until)}.`;
    case "tract-age-unknown":
      return `Another row: not removed before a tract age of ${reason.days} days, and the age is not known.`;
    case "plateau":
      return plateauSentence(reason);
    case "readings-not-placed":
      return `${capital(count(reason.count, "reading counts", "readings count"))} in no day: correct ${reason.count === 1 ? "its time" : "their times"}.`;
  }
}

/** "Plateau: over 50 mL/24 h on 6 of the last 7 covered days, ... (row: on 5 of the last 7; source CP)." */
function plateauSentence({ overMl, over, covered, from, to, days, ofLast, source }: Plateau): string {
  const of = covered === over ? `each of the last ${covered}` : `${over} of the last ${covered}`;
  return `Plateau: over ${overMl} mL/24 h on ${of} covered days, ${printDay(from)} to ${printDay(to)} (row: on ${days} of the last ${ofLast}; source ${source}).`;
}

/** "Row: net under 10 mL/24 h on 2 complete days running; version 1, source 1; EXAMPLE." */
export function rowSentence(row: CriterionRow): string {
  const approved = row.approved ? "" : ", EXAMPLE";
  return `Row: ${rowWords(row)}. Version ${row.version}${approved}, source ${row.source}.`;
}

function rowWords(row: CriterionRow): string {
  switch (row.what) {
    case "net days":
      return `net under ${row.underMl} mL/24 h on ${row.running} complete days running`;
    case "chest tube":
      return `no air leak for ${row.noAirLeakHours} h, under ${row.underMl} mL/24 h, lung up on film`;
    case "sessions":
      return `under ${row.underMl} mL on ${row.running} sessions running, no symptoms`;
  }
}
