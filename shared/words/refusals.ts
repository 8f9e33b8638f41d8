import type { RefusalCode } from "#shared/errors/codes.ts";
import type { Refusal, RefusalArgs } from "#shared/errors/refusal.ts";

type Sentence = (args: RefusalArgs) => string;

/** Each sentence says what to mend. Nothing here blames the person who typed. */
const sentences = {
  "day-not-understood": ({ text }) =>
    `"${text}" is not understood as a date. Type it like 14 nov 2026, today, -3, march 2026, or ? for unknown.`,
  "day-order-unclear": ({ text }) =>
    `"${text}" can be read two ways. Type the month in letters, like 3 apr 2026.`,
  "day-in-future": ({ day }) => `${day} is in the future. Type the day on which it happened.`,
  "day-does-not-exist": ({ text }) => `There is no day "${text}". Check day and month.`,
  "day-missing": () => "Type a date, or ? if it is unknown.",
  "time-not-understood": ({ text }) => `"${text}" is not understood as a time. Type it like 14:05.`,
  "time-does-not-exist": ({ text, day }) =>
    `There is no ${text} on ${day}: the clocks go forward over it. Type a time before or after the change.`,
  "closure-ends-before-start": () => "The closure ends before it starts. Check both days.",
  "choice-repeated": () => "The same choice stands here twice. Remove one.",
  "length-not-understood": ({ text }) =>
    `"${text}" is not understood as a size. Type it with its unit, like 8 F, .035 in or 2.7 mm.`,
  "length-needs-unit": ({ text }) => `"${text}" needs a unit: F, in, mm, cm or G.`,
  "length-absurd": ({ text, limit }) =>
    `${text} is outside what is made (${limit}). Check the number and the unit.`,
  "length-not-positive": ({ text }) => `"${text}" must be more than zero.`,
  "text-missing": ({ what }) => `Type ${what ?? "something here"}.`,
  "text-too-long": ({ limit }) => `This is longer than ${limit} characters. Shorten it.`,
  "choice-unknown": ({ text }) => `"${text}" is not one of the choices here.`,
} satisfies Record<RefusalCode, Sentence>;

/** The sentence shown for a refusal. */
export function refusalSentence(refusal: Refusal): string {
  const sentence: Sentence = sentences[refusal.code];
  return sentence(refusal.args ?? {});
}
