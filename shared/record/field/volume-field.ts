import { parsed, unread } from "#shared/errors/refusal.ts";
import { type Microlitres, microlitres, toMl } from "#shared/output/microlitre.ts";
import { readVolume, type TypedVolume } from "#shared/output/read-volume.ts";
import type { Flush } from "#shared/output/reading.ts";
import { factWords } from "#shared/record/field/fact-words.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";

export const printMl = (volume: Microlitres): string => `${toMl(volume)} mL`;

/** What was emptied. A minus is read here and left to the form: only a figure that is net already may have one. */
export const drainedField = (words: FieldWords): FieldSpec<TypedVolume> => ({
  ...words,
  read: (text) => readVolume(text, "net"),
  echo: ({ volume }) => factWords(volume, printMl),
});

/** An amount that has to be known. `what` completes "Type ..." for a blank or "?". */
export const amountField = (words: FieldWords, what: string): FieldSpec<Microlitres> => ({
  ...words,
  read: (text) => {
    if (text.trim() === "") return unread("text-missing", { what });
    const read = readVolume(text, "amount");
    if (!read.ok) return read;
    const { volume } = read.value;
    return volume.certainty === "unknown" ? unread("text-missing", { what }) : parsed(volume.value);
  },
  echo: printMl,
});

const TIMES = /^(\d{1,2})\s*[x×*]\s*(.+)$/i;
const NOT_RECORDED = /^(?:\?|not recorded)?$/i;
const NONE = /^(?:none|no|0)$/i;

/** Flush that went in or came back: "10", "3 x 10", "~10", "none"; a blank or "?" is not recorded, which is not none. */
export const flushField = (words: FieldWords): FieldSpec<Flush> => ({
  ...words,
  read: (text) => {
    const typed = text.trim();
    if (NOT_RECORDED.test(typed)) return parsed("not recorded");
    if (NONE.test(typed)) return parsed("none");
    const [, times = "1", each = typed] = TIMES.exec(typed) ?? [];
    const read = readVolume(each, "amount");
    if (!read.ok) return read;
    const { volume } = read.value;
    if (volume.certainty === "unknown") return parsed("not recorded");
    const estimated = volume.certainty === "estimated";
    return parsed({ ul: microlitres(volume.value * Number(times)), estimated });
  },
  echo: (flush) => {
    if (typeof flush === "string") return flush;
    return flush.estimated ? `about ${printMl(flush.ul)}` : printMl(flush.ul);
  },
});
