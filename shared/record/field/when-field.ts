import { printWhen } from "#shared/day/print-day.ts";
import { readWhenAt, type WhenAt } from "#shared/day/read-when-at.ts";
import { parsed } from "#shared/errors/refusal.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { lastYearsDay } from "#shared/record/field/last-years-day.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";

export const WHEN_HINT = "today, yesterday 23:50, -3, 14 nov, in march; ? if unknown";

const printWhenAt = ({ when, time }: WhenAt): string =>
  time === null ? printWhen(when) : `${printWhen(when)}, ${time}`;

/** When it happened: "today" unless typed otherwise, with a clock time where one is typed after it. */
export const whenField = (
  words: FieldWords,
  context: Pick<FormContext, "today" | "now" | "zone">,
): FieldSpec<WhenAt> => ({
  initial: "today",
  hint: WHEN_HINT,
  ...words,
  read: (text) => readWhenAt(text, context),
  echo: printWhenAt,
  doubt: (_at, text) => lastYearsDay(text, context),
});

/** A date that may be left blank, which says nothing. */
export const optionalWhenField = (
  words: FieldWords,
  context: FormContext,
): FieldSpec<WhenAt | undefined> => ({
  ...words,
  read: (text) => (text.trim() === "" ? parsed(undefined) : readWhenAt(text, context)),
  echo: (at) => (at === undefined ? "" : printWhenAt(at)),
  doubt: (at, text) => (at === undefined ? null : lastYearsDay(text, context)),
});
