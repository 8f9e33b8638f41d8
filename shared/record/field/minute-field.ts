import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { readMinute } from "#shared/visit/read-minute.ts";
import type { Minute } from "#shared/visit/room.ts";
import { printMinute } from "#shared/words/offers.ts";

function read(text: string): Parsed<Minute | null> {
  const typed = text.trim().toLowerCase();
  if (typed === "") return parsed(null);
  const minute = readMinute(typed);
  return minute === null || minute === 1440
    ? unread("clock-not-understood", { text: text.trim() })
    : parsed(minute);
}

/** A time of day by the clinic's clock; blank is null. */
export const minuteField = (words: FieldWords): FieldSpec<Minute | null> => ({
  hint: "9:30, 1430, 2 pm",
  ...words,
  read,
  echo: (minute) => (minute === null ? "" : printMinute(minute)),
});
