import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { MOST_TELEPHONES, NUMBER_LIMIT } from "#shared/record/patient/limits.ts";
import { LINE_LIMIT } from "#shared/tube/entry-limits.ts";

export type Telephone = { readonly number: string; readonly bestTimes: string | null };

const NUMBER_FIRST = /^(\+?[\d(][\d ()./-]{1,}\d)(?:\s*(?:ext\.?|x)\s*\d+)?[\s,;:]*(.*)$/i;

/** A clock time behind a number is no part of it: "555 0117 18:00-20:00". */
const TIME_BEHIND = /\s\d{1,2}(?::\d{2}|\s?[ap]m\b)/i;

/** The number that a line begins with, as it is typed, and what stands after it; null where it begins with none. */
export function numberFirst(line: string): { readonly number: string; readonly after: string } | null {
  const upToTime = line.slice(0, TIME_BEHIND.exec(line)?.index);
  const [, found, words = ""] = NUMBER_FIRST.exec(upToTime) ?? [];
  if (found === undefined) return null;
  const number = upToTime.slice(0, upToTime.length - words.length).replace(/[\s,;:]+$/, "");
  return { number, after: `${words}${line.slice(upToTime.length)}`.trim() };
}

function readTelephone(line: string, place: number): Parsed<Telephone> {
  const read = numberFirst(line);
  if (read === null) return unread("telephone-not-understood", { line: place });
  const { number, after: bestTimes } = read;
  if (number.length > NUMBER_LIMIT) return unread("text-too-long", { limit: NUMBER_LIMIT });
  if (bestTimes.length > LINE_LIMIT) return unread("text-too-long", { limit: LINE_LIMIT });
  return parsed({ number, bestTimes: bestTimes === "" ? null : bestTimes });
}

/** One telephone number a line, best times after it: "555 0117 after 5 pm". The number is kept as typed. */
export const telephonesField = (words: FieldWords): FieldSpec<readonly Telephone[]> => ({
  ...words,
  long: true,
  read: (text) => {
    const lines = text.split("\n").map((line) => line.trim());
    const telephones: Telephone[] = [];
    for (const [index, line] of lines.entries()) {
      if (line === "") continue;
      const read = readTelephone(line, index + 1);
      if (!read.ok) return read;
      telephones.push(read.value);
    }
    return telephones.length > MOST_TELEPHONES
      ? unread("too-many", { limit: MOST_TELEPHONES })
      : parsed(telephones);
  },
  echo: (telephones) =>
    telephones
      .map(({ number, bestTimes }) => (bestTimes === null ? number : `${number} (${bestTimes})`))
      .join("; "),
});
