import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";
import { LINE_LIMIT, NOTE_LIMIT } from "#shared/tube/entry-limits.ts";

/** Text is kept as typed, whatever its script or signs; only the spaces round it go. */
function readText(text: string, limit: number): Parsed<string | null> {
  const typed = text.trim();
  if (typed.length > limit) return unread("text-too-long", { limit });
  return parsed(typed === "" ? null : typed);
}

/** One line; blank is null. */
export const lineField = (words: FieldWords, limit = LINE_LIMIT): FieldSpec<string | null> => ({
  ...words,
  read: (text) => readText(text, limit),
});

/** A text of several lines; blank is null. */
export const noteField = (words: FieldWords): FieldSpec<string | null> => ({
  ...words,
  long: true,
  read: (text) => readText(text, NOTE_LIMIT),
});

/** Text that the entry cannot do without. `what` completes "Type ...". */
export const filledField = (
  words: FieldWords & Pick<FieldSpec<string>, "long">,
  what: string,
  limit = LINE_LIMIT,
): FieldSpec<string> => ({
  ...words,
  read: (text) => {
    const read = readText(text, limit);
    if (!read.ok) return read;
    return read.value === null ? unread("text-missing", { what }) : parsed(read.value);
  },
});

/** A fact in words: blank says nothing, "?" unknown, "~" before it estimated. */
export const textFactField = (words: FieldWords): FieldSpec<Fact<string> | undefined> => ({
  ...words,
  read: (text) => {
    const read = readText(text, LINE_LIMIT);
    if (!read.ok) return read;
    if (read.value === null) return parsed(undefined);
    if (read.value === "?") return parsed(unknownFact);
    const about = /^~\s*(.+)$/s.exec(read.value)?.[1];
    return parsed(
      about === undefined
        ? { certainty: "confirmed", value: read.value }
        : { certainty: "estimated", value: about },
    );
  },
});
