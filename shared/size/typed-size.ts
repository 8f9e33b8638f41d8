import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { LengthUnit } from "#shared/size/length.ts";

/** What stands after the number when people type a size. */
const unitWords: Readonly<Record<string, LengthUnit | "G">> = {
  f: "F",
  fr: "F",
  french: "F",
  ch: "F",
  charr: "F",
  in: "in",
  inch: "in",
  inches: "in",
  '"': "in",
  "″": "in",
  "”": "in",
  mm: "mm",
  cm: "cm",
  g: "G",
  ga: "G",
  gauge: "G",
};

/** A typed size taken apart. `digits` is a plain decimal with a point; `unit` is undefined when none was typed. */
export type TypedSize =
  | { readonly certainty: "unknown" }
  | {
      readonly certainty: "confirmed" | "estimated";
      readonly negative: boolean;
      readonly digits: string;
      readonly unit: LengthUnit | "G" | undefined;
    };

const SIZE = /^(~?)\s*([-−]?)\s*(\d+|\d*[.,]\d+|\d+(?:,\d{3})+)\s*-?\s*(\p{L}*|["″”])\.?$/u;
const GROUPED = /^[1-9]\d{0,2}(,\d{3})+$/;

/**
 * Takes typed text apart: "8 F", "8.5Fr", "10.2 Ch", ".035 in", `0.035"`, "2,7 mm", "21 G", "~8F", "?". "1,500" can be read two
 * ways and is asked again, and a decimal comma needs its unit even in a field that has one of its own.
 */
export function typedSize(entry: string): Parsed<TypedSize> {
  const text = entry.trim();
  if (text === "") return unread("text-missing", { what: "a size with its unit, or ? if it is unknown" });
  if (text === "?") return parsed({ certainty: "unknown" });
  const [, about, minus, number = "", word = ""] = SIZE.exec(text) ?? [];
  const unit = unitWords[word.toLowerCase()];
  if (number === "" || (word !== "" && unit === undefined)) return unread("length-not-understood", { text });
  if (GROUPED.test(number)) return unread("length-comma-unclear", { text });
  if (unit === undefined && number.includes(",")) return unread("length-needs-unit", { text });
  return parsed({
    certainty: about === "~" ? "estimated" : "confirmed",
    negative: minus !== "",
    digits: number.replace(",", "."),
    unit,
  });
}
