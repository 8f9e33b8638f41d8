import { parsed, unread } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { numberFirst } from "#shared/record/field/telephones-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { NUMBER_LIMIT } from "#shared/record/patient/limits.ts";

/** The number that was rung, kept as typed; blank is null. A number begins with a digit and holds no letters. */
export const ringField = (words: FieldWords): FieldSpec<string | null> => ({
  ...words,
  read: (text) => {
    const typed = text.trim();
    if (typed === "") return parsed(null);
    if (typed.length > NUMBER_LIMIT) return unread("text-too-long", { limit: NUMBER_LIMIT });
    return numberFirst(typed)?.after === "" ? parsed(typed) : unread("number-not-rung", { text: typed });
  },
});
