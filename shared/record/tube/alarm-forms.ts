import type { Refusal } from "#shared/errors/refusal.ts";
import { toMl } from "#shared/output/microlitre.ts";
import { answersField } from "#shared/record/field/answers-field.ts";
import { choiceField, choicesOf } from "#shared/record/field/choice-field.ts";
import { comingDayField } from "#shared/record/field/day-field.ts";
import { filledField, noteField } from "#shared/record/field/text-field.ts";
import { amountField } from "#shared/record/field/volume-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { notBeforeDecided } from "#shared/record/not-before-decided.ts";
import { alarmDones, usualRows } from "#shared/tube/vocabulary.ts";

/** "Other" says nothing by itself. */
const saidWhat = (done: string, note: string | null): readonly Refusal[] =>
  done === "other" && note === null
    ? [{ code: "text-missing", field: "note", args: { what: "what was done" } }]
    : [];

/** Close an alarm by hand: what was done, by whom, and which of its reasons that answers. */
export const alarmClosedForm = form({
  fields: (context: FormContext) => ({
    done: choiceField({ label: "What was done", what: "what was done" }, choicesOf(alarmDones)),
    by: filledField({ label: "Done or decided by" }, "who did it or decided it"),
    answers: answersField({ label: "It answers" }, context.tube?.alarm ?? []),
    note: noteField({ label: "Note", hint: "needed where it was something other" }),
    when: whenField({ label: "Done on" }, context),
  }),
  check: ({ done, note }) => saidWhat(done, note),
  entry: ({ answers, done, by, note, when }): EntryOf<"alarm closed"> => ({
    kind: "alarm closed",
    ...when,
    payload: { answers: [...answers], done, by, note },
  }),
});

const rows = choicesOf(usualRows).map((row) => ({
  ...row,
  label: row.value === "low" ? "Low output" : "High output",
}));

/** Accept a level as usual for this tube, until a day. Dry is never usual. */
export const usualLevelForm = form({
  fields: (context: FormContext) => {
    const row = context.tube?.alarm.find((reason) => reason.row !== null)?.row;
    return {
      row: choiceField({ label: "Row", what: "which row", ...(row && { initial: row }) }, rows),
      level: amountField({ label: "Usual for this tube, mL in 24 h", hint: "60" }, "what is usual"),
      until: comingDayField({ label: "Until", what: "the day until which it is accepted" }, context),
      acceptedBy: filledField({ label: "Accepted by" }, "who accepted it"),
      note: noteField({ label: "Reason" }),
      when: whenField({ label: "Accepted on" }, context),
    };
  },
  check: ({ level, until, when }) => [
    ...(level === 0 ? [{ code: "usual-level-zero", field: "level" } as const] : []),
    ...notBeforeDecided("until", until, when),
  ],
  entry: ({ row, level, until, acceptedBy, note, when }): EntryOf<"usual level accepted"> => ({
    kind: "usual level accepted",
    ...when,
    payload: { row, mlPer24h: toMl(level), until, acceptedBy, note },
  }),
});
