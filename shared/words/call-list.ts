import type { CallStory, NextOfLine, TryOfLine } from "#shared/call/call-line.ts";
import type { There } from "#shared/call/reach.ts";
import { type Day, daysBetween, weekdayOf } from "#shared/day/day.ts";
import { printDate, printDay, weekdayNames } from "#shared/day/print-day.ts";
import type { DayPart } from "#shared/protocol/call-rows.ts";
import type { Why, WhyCode } from "#shared/step/step.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import { andList } from "#shared/words/and-list.ts";
import { capital } from "#shared/words/capital.ts";
import { stepNames } from "#shared/words/steps.ts";
import { whySentence } from "#shared/words/why.ts";

/** Why somebody is rung: of which tube, null of the patient, and the sentence. */
export type Reason = { readonly tube: string | null; readonly says: string };

type Step = { readonly kind: StepKind; readonly tube: string | null; readonly why: readonly Why[] };

const callReasons: readonly WhyCode[] = [
  "first-call",
  "collection-call",
  "exchange-call",
  "missed-call",
  "discharge-call",
  "trial-call",
  "removal-call",
];

/** A red flag says who has it; of a call the arithmetic stands on the tube's page. */
function sentenceOf({ kind, why }: Pick<Step, "kind" | "why">): string {
  const found = why.find(({ code }) => callReasons.includes(code)) ?? why[0];
  if (found === undefined) return `${stepNames[kind]}.`;
  if (kind === "red flag") return why.slice(0, 2).map(whySentence).join(" ");
  return whySentence(found);
}

/** One reason for each tube that a step speaks of: the call of several says of which it speaks in its own lines. */
function reasonsOfStep({ kind, tube, why }: Step): readonly Reason[] {
  const starts = why.flatMap(({ code }, index) => (code === "of-tube" ? [index] : []));
  if (starts.length === 0) return [{ tube, says: sentenceOf({ kind, why }) }];
  return starts.map((start, index) => ({
    tube: String(why[start]?.args.tube ?? ""),
    says: sentenceOf({ kind, why: why.slice(start + 1, starts[index + 1]) }),
  }));
}

/** What a patient is rung about, tube by tube in the order of the steps: what several steps say of one tube stands behind its name. */
export function reasonsOf(steps: readonly Step[]): readonly Reason[] {
  const byTube = new Map<string | null, readonly string[]>();
  for (const { tube, says } of steps.flatMap(reasonsOfStep)) {
    const said = byTube.get(tube) ?? [];
    byTube.set(tube, said.includes(says) ? said : [...said, says]);
  }
  return [...byTube].map(([tube, said]) => ({ tube, says: said.join(" ") }));
}

const WEEK = 7;
const weekday = (on: Day): string => weekdayNames[weekdayOf(on) - 1]?.slice(0, 3) ?? "";
const shortDay = (on: Day, today: Day): string =>
  Math.abs(daysBetween(on, today)) < WEEK ? weekday(on) : `${weekday(on)} ${printDate(on)}`;

function tryWords({ on, time, to, outcome }: TryOfLine, today: Day): string {
  const at = `${shortDay(on, today)}${time === null ? "" : ` ${time}`}`;
  if (outcome === null) return `letter to ${to} ${at}`;
  return `${to === "the patient" ? "" : `${to}, `}${outcome} ${at}`;
}

/** "2 of 3 tries: voicemail Mon 10:00, no answer Tue 18:10". Null where nobody was tried. */
export function triedWords({ tries, next }: Pick<CallStory, "tries" | "next">, today: Day): string | null {
  if (tries.length === 0) return null;
  const of = next === null || next.of === null ? `${tries.length}` : `${next.tried} of ${next.of}`;
  const count = `${of} ${of === "1" ? "try" : "tries"}`;
  return `${count}: ${tries.map((one) => tryWords(one, today)).join(", ")}`;
}

const nextActs: Readonly<Record<NextOfLine["next"], string>> = {
  call: "call",
  "call back": "call back",
  "alternate contact": "ring the alternate contact",
  letter: "send the letter",
  "referrer and family doctor": "ask the referrer and the family doctor",
  physician: "a physician decides how it goes on",
};

/** "the patient's clock is 8 h behind, America/Denver". Null where it shows the same. */
export function thereWords(there: There | null): string | null {
  if (there === null) return null;
  const { aheadMinutes, zone } = there;
  const [hours, minutes] = [Math.floor(Math.abs(aheadMinutes) / 60), Math.abs(aheadMinutes) % 60];
  const by = [hours > 0 && `${hours} h`, minutes > 0 && `${minutes} min`].filter((part) => part !== false);
  return `the patient's clock is ${by.join(" ")} ${aheadMinutes < 0 ? "behind" : "ahead"}, ${zone}`;
}

/** With what it shows now: "07:40 there: the patient's clock is 8 h behind, America/Denver". */
export const thereNowWords = (there: There | null): string | null =>
  there === null ? null : `${there.time} there now: ${thereWords(there)}`;

type Due = {
  readonly there: There | null;
  readonly dueOn: Day;
  readonly nextTime: string | null;
  readonly nextPart: DayPart | null;
  readonly story: Pick<CallStory, "next">;
};

/** When, and what of a ladder comes next: "Today at 18:00, as they asked", "Wed, in the evening", "Since Mon 16 Nov 2026". */
export function nextWords({ dueOn, nextTime, nextPart, there, story: { next } }: Due, today: Day): string {
  const day = dueOn === today ? "today" : dueOn < today ? `since ${printDay(dueOn)}` : printDay(dueOn);
  const time =
    nextTime === null
      ? nextPart === null
        ? ""
        : `, in the ${nextPart}${there === null ? "" : " there"}`
      : ` at ${nextTime}`;
  const asked = next?.next === "call back" && nextTime !== null ? ", as they asked" : "";
  const act =
    next === null || next.next === "call" || next.next === "call back" ? "" : `: ${nextActs[next.next]}`;
  return `${capital(day)}${time}${asked}${act}`;
}

type Marked = {
  readonly flagPending: boolean;
  readonly inTrial: boolean;
  readonly firstHoursUntil: Day | null;
  readonly latestOn: Day | null;
  readonly attemptsLeft: number;
};

/** What puts a line before others, in the order in which it does. */
export function marksOfCall(line: Marked, today: Day): readonly string[] {
  const { flagPending, inTrial, firstHoursUntil, latestOn, attemptsLeft } = line;
  return [
    flagPending && "red flag, nobody has it",
    inTrial && "trial running",
    !inTrial && firstHoursUntil !== null && firstHoursUntil >= today && "first hours",
    latestOn !== null && latestOn < today && `past latest, ${printDay(latestOn)}`,
    attemptsLeft === 1 && "last attempt",
  ].filter((mark) => mark !== false);
}

/** "Interpreter: Farsi"; null where none is needed. Nobody asked is said. */
export function interpreterWords(of: {
  readonly needsInterpreter: boolean | null;
  readonly language: string;
}): string | null {
  if (of.needsInterpreter === false) return null;
  if (of.needsInterpreter === null)
    return of.language === ""
      ? "language and interpreter not known"
      : `${of.language}, interpreter not known`;
  return `interpreter: ${of.language === "" ? "language not known" : of.language}`;
}

type Trial = Pick<CallStory["trials"][number], "tube" | "covers"> & { readonly familyName: string };

/** Who covers trials on a day on which the clinic is closed. */
export function coversWords(trials: readonly Trial[]): string {
  if (trials.length === 0) return "No trial runs.";
  const named = [...new Set(trials.flatMap(({ covers }) => covers ?? []))].toSorted();
  const without = trials.filter(({ covers }) => covers === null);
  return [
    named.length > 0 && `Trials are covered by ${andList(named)}.`,
    without.length > 0 &&
      `Of ${without.length} running ${without.length === 1 ? "trial" : "trials"} nobody has said who covers: ${andList(without.map(({ familyName, tube }) => `${familyName}, ${tube}`))}.`,
  ]
    .filter((part) => part !== false)
    .join(" ");
}
