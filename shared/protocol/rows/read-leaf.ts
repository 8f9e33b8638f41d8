import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { Leaf, LeafValue } from "#shared/protocol/rows/leaf.ts";
import { asWords, matchWord } from "#shared/record/field/match-word.ts";
import { exactLength } from "#shared/size/exact-length.ts";
import type { Length } from "#shared/size/length.ts";
import { typedSize } from "#shared/size/typed-size.ts";

type Of<Is extends LeafValue["is"]> = Extract<LeafValue, { readonly is: Is }>;
type Bounds = { readonly least: number | null; readonly most: number | null };

/** More than any figure of a row has, so that a slip of the finger is asked. */
const DIGITS = 7;
const WHOLE = new RegExp(`^[-−]?\\d{1,${DIGITS}}$`);
const DECIMAL = new RegExp(`^[-−]?(?:\\d{1,${DIGITS}}(?:\\.\\d{1,6})?|\\.\\d{1,6})$`);

function within(text: string, { least, most }: Bounds): Parsed<number> {
  const figure = Number(text.replace("−", "-")) || 0;
  if ((least === null || figure >= least) && (most === null || figure <= most)) return parsed(figure);
  if (least !== null && most !== null) return unread("figure-outside", { text, least, most });
  return least === null
    ? unread("figure-too-high", { text, most: most ?? 0 })
    : unread("figure-too-low", { text, least });
}

function readNumber(
  text: string,
  value: Bounds & { readonly is: "whole number" | "number" },
): Parsed<number> {
  if (text.includes(",")) return unread("measure-comma-unclear", { text });
  if (!DECIMAL.test(text)) return unread("figure-not-understood", { text });
  if (value.is === "whole number" && !WHOLE.test(text)) return unread("figure-not-whole", { text });
  return within(text, value);
}

/** A tolerance may be nothing at all, with its unit; any other reader of a size refuses zero. */
function readRowLength(text: string): Parsed<Length> {
  const typed = typedSize(text);
  if (!typed.ok) return typed;
  if (typed.value.certainty !== "confirmed") return unread("length-not-understood", { text });
  const { digits, unit, negative } = typed.value;
  if (negative) return unread("figure-too-low", { text, least: 0 });
  if (unit === undefined) return unread("length-needs-unit", { text });
  if (unit === "G") return unread("length-unit-unfit", { text, what: "how much finer", like: "0.05 mm" });
  const length = exactLength(digits, unit);
  return length === undefined ? unread("length-too-fine", { text, decimals: 5 }) : parsed(length);
}

function readWords(text: string, longest: number): Parsed<string> {
  const words = text.replace(/\s*[\r\n]+\s*/g, " ").trim();
  return words.length > longest ? unread("text-too-long", { limit: longest }) : parsed(words);
}

/** Each part once, in the order in which it is typed. */
function readParts<T>(parts: readonly string[], read: (part: string) => Parsed<T>): Parsed<readonly T[]> {
  const found: T[] = [];
  for (const part of parts.map((each) => each.trim()).filter((each) => each !== "")) {
    const one = read(part);
    if (!one.ok) return one;
    if (found.includes(one.value)) return unread("choice-repeated");
    found.push(one.value);
  }
  return parsed(found);
}

function readNumbers(text: string, { least, most }: Of<"numbers">): Parsed<readonly number[]> {
  const parts = text.split(/[\s,;]+|\bor\b|\band\b/);
  return readParts(parts, (part) => readNumber(part, { is: "whole number", least, most }));
}

function readListOfWords(text: string, { longest, atMost }: Of<"list of words">): Parsed<readonly string[]> {
  const list = readParts(text.split(/[\r\n]+/), (line) => readWords(line, longest));
  return list.ok && atMost !== null && list.value.length > atMost
    ? unread("too-many", { limit: atMost })
    : list;
}

/** Text that is not blank, as what stands in the place. */
function readFilled(text: string, value: LeafValue): Parsed<unknown> {
  switch (value.is) {
    case "whole number":
    case "number":
      return readNumber(text, value);
    case "length":
      return readRowLength(text);
    case "words":
      return readWords(text, value.longest);
    case "yes or no": {
      const answer = matchWord(text, asWords(["yes", "no"]));
      return answer.ok ? parsed(answer.value === "yes") : answer;
    }
    case "one of":
      return matchWord(text, asWords(value.options));
    case "some of": {
      const vocabulary = asWords(value.options);
      return readParts(text.split(","), (part) => matchWord(part, vocabulary));
    }
    case "numbers":
      return readNumbers(text, value);
    case "list of words":
      return readListOfWords(text, value);
  }
}

/** What to type where a place has to be filled. */
const whatOf = {
  "whole number": "a whole number",
  number: "a number",
  length: "a size with its unit",
  words: "what the row says here",
  "yes or no": "yes or no",
  "one of": "one of the choices",
  "some of": "one or more of the choices, with commas between",
  numbers: "one number or more, with commas between",
  "list of words": "one line or more",
} as const satisfies Record<LeafValue["is"], string>;

/** What is said of a place that has to be filled and is blank. */
export const leafMissing = ({ value }: Pick<Leaf, "value">): Parsed<never> =>
  unread("text-missing", { what: whatOf[value.is] });

export const isBlank = (text: string | undefined): boolean => (text ?? "").trim() === "";

/**
 * What was typed in a place: undefined where it is blank, which whoever asks has to give its meaning. Refusals name what to mend: no
 * number, no whole one, one outside its bounds, no unit, a word that is none of the choices.
 */
export function readLeaf(value: LeafValue, text: string): Parsed<unknown> {
  return isBlank(text) ? parsed(undefined) : readFilled(text.trim(), value);
}
