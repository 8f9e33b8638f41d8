import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { readDay } from "#shared/day/read-day.ts";
import { unread } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { passedDay } from "#shared/record/field/passed-day.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";

/** One exact day by which something is to be, so to come where no year is typed. `what` completes "Type ...". */
export const comingDayField = (
  words: FieldWords & { readonly what: string },
  { today }: Pick<FormContext, "today">,
): FieldSpec<Day> => {
  const { what, ...shown } = words;
  return {
    hint: "30 oct, +14",
    ...shown,
    read: (text) =>
      text.trim() === "" ? unread("text-missing", { what }) : readDay(text, { today, direction: "future" }),
    echo: printDay,
    doubt: (day) => passedDay(day, today),
  };
};
