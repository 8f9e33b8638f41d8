import { isDay } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { Why, WhyCode } from "#shared/step/step.ts";

type Args = Why["args"];
type Value = Args[string] | undefined;

const on = (value: Value): string =>
  typeof value === "string" && isDay(value) ? printDay(value) : String(value ?? "an unknown day");

const nextWords: Readonly<Record<string, string>> = {
  call: "the next attempt",
  "call back": "they asked to be rung back",
  "alternate contact": "the alternate contact is rung",
  letter: "a letter is sent",
  "referrer and family doctor": "the referrer and the family doctor are asked",
  physician: "a physician decides",
};

/** "Tried 2 of 3 times and nobody reached: the next attempt on Tue 3 Nov 2026, in the evening (source CP)." */
function nextTry({ tried, of, next, day, at, part, source }: Args): string {
  const count = of === null ? `${tried} times` : `${tried} of ${of} times`;
  const time = at === null ? (part === null ? "" : `, in the ${part}`) : ` at ${at}`;
  const row = source === null ? "no row says what follows" : `source ${source}`;
  return `Tried ${count} and nobody reached: ${nextWords[String(next)] ?? next} on ${on(day)}${time} (${row}).`;
}

/** Why somebody is called, what was tried, and what was told in a call. */
export const callWhy = {
  "collection-call": ({ day, from, to, source }) =>
    `A drain of a collection is called about ${from === to ? `every ${from} days` : `every ${from} to ${to} days`} until it is out: last on ${on(day)} (source ${source}).`,
  "exchange-call": ({ day, days, workingDays, source }) =>
    `Called ${days} days and ${workingDays} working days before ${on(day)} (source ${source}).`,
  "missed-call": ({ day }) => `Nobody came on ${on(day)}: ask why.`,
  "discharge-call": ({ from, to, day, source }) =>
    `Home from the hospital since ${on(day)}: called on day ${from} to ${to} (source ${source}).`,
  "trial-call": ({ day }) => `The call of the trial on ${on(day)} reached nobody.`,
  "removal-call": ({ from, to, day, source }) =>
    `Removed on ${on(day)}: called on day ${from} to ${to} after it (source ${source}).`,
  "of-tube": ({ tube }) => `${tube}:`,
  "next-try": nextTry,
  "call-again": ({ day, decidedBy }) =>
    `Nobody was reached: ${decidedBy} decided that the calls go on from ${on(day)}.`,
  "wrong-number": ({ number }) =>
    `${number === null ? "The number" : number} is somebody else's: find another, and take that one out of the record.`,
  "red-flag": ({ level, says, untilReached }) =>
    `Red flag, ${level}: ${says}.${untilReached === null ? "" : ` Until somebody is reached: ${untilReached}.`}`,
  "flag-not-handed": () => "Handed to nobody yet.",
  "flag-handed": ({ to, day, at }) =>
    `Handed to ${to}, ${on(day)}${at === null ? "" : ` at ${at}`}. What was done is not recorded.`,
  "diary-missing": ({ day, days, source }) =>
    `The last volume is of ${on(day)}; asked for after ${days} days without one (source ${source}).`,
  "not-told": () =>
    "Nobody has recorded that the patient was told of this tube, in their own language. A tube that lies wholly inside is forgotten by whoever does not know of it.",
} as const satisfies Partial<Record<WhyCode, (args: Args) => string>>;
