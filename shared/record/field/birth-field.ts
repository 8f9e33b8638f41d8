import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { readDay } from "#shared/day/read-day.ts";
import { parsed } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";

/** Whole years on a day. Someone born on 29 February is a year older on 1 March. */
const yearsOld = (bornOn: Day, today: Day): number =>
  Number(today.slice(0, 4)) - Number(bornOn.slice(0, 4)) - (today.slice(5) < bornOn.slice(5) ? 1 : 0);

/** A birth date, echoed with the age, so that a wrong century is seen. "?" is null: unknown. */
export const birthField = (words: FieldWords, { today }: FormContext): FieldSpec<Day | null> => ({
  ...words,
  read: (text) => (text.trim() === "?" ? parsed(null) : readDay(text, { today, direction: "past" })),
  echo: (bornOn) =>
    bornOn === null ? "unknown" : `${printDay(bornOn)}, ${yearsOld(bornOn, today)} years old`,
});
