import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";

/** Hours, with parts of one, then minutes; either may be left out. */
const SHAPE = /^(?:(\d{1,4}(?:[.,]\d{1,2})?) ?(?:h|hrs?|hours?))? ?(?:(\d{1,5}) ?(?:m|min|mins|minutes?)?)?$/;
const CLOCK = /^(\d{1,4}):([0-5]\d)$/;

/** A length of time as people type it: `60`, `90 min`, `1 h`, `1 h 30`, `1.5 h`, `1:30`. In whole minutes. Refusal: `minutes-not-understood`. */
export function readMinutes(text: string): Parsed<number> {
  const typed = text.trim().toLowerCase().replace(/\s+/g, " ");
  const [, hours, minutes] = CLOCK.exec(typed) ?? SHAPE.exec(typed) ?? [];
  const total = Number((hours ?? "0").replace(",", ".")) * 60 + Number(minutes ?? 0);
  if ((hours ?? minutes) === undefined || !Number.isInteger(total))
    return unread("minutes-not-understood", { text: text.trim() });
  return parsed(total);
}

/** A length of time; blank is none. `echo` says it in words. */
export const minutesField = (words: FieldWords, echo: (minutes: number) => string): FieldSpec<number> => ({
  ...words,
  read: (text) => (/^\s*(?:none)?\s*$/i.test(text) ? parsed(0) : readMinutes(text)),
  echo,
});
