import { describe, expect, it } from "vitest";
import { instant } from "#shared/day/instant.ts";
import type { ReasonInForm } from "#shared/record/form.ts";
import { formContext, leftNephrostomy } from "#tests/factories/form-context.ts";
import { alarmClosedForm, usualLevelForm } from "./alarm-forms.ts";

const until = instant(Date.parse("2026-11-06T07:00Z"));
const dry: ReasonInForm = { key: "dry:r1", until, says: "Nothing drained for 7 h.", row: null };
const low: ReasonInForm = { key: "low:2026-11-05", until, says: "Low on Thu 5 Nov 2026.", row: "low" };
const blocked: ReasonInForm = { key: "trouble:e4", until: null, says: "Recorded: blocked.", row: null };
const beside = (...alarm: readonly ReasonInForm[]) => formContext({ tube: { ...leftNephrostomy, alarm } });
const said = { done: "unkinked", by: "Dr Example" };

describe("closing an alarm", () => {
  it("answers all that stood when the form opened, unless one is chosen", () => {
    const context = beside(dry, blocked);
    expect(alarmClosedForm.read(said, context)).toMatchObject({
      entry: {
        payload: {
          answers: [
            { key: "dry:r1", until },
            { key: "trouble:e4", until: null },
          ],
        },
      },
    });
    const one = alarmClosedForm.read({ ...said, answers: "trouble:e4" }, context);
    expect(one).toMatchObject({ entry: { payload: { answers: [{ key: "trouble:e4", until: null }] } } });
  });

  it("offers each reason in its words and says again which are answered", () => {
    const { answers } = alarmClosedForm.fields(beside(dry, blocked));
    expect(answers.choices?.map(({ label }) => label)).toEqual([
      "All 2 reasons",
      "Nothing drained for 7 h.",
      "Recorded: blocked.",
    ]);
    const read = answers.read(answers.initial ?? "");
    expect(read.ok && answers.echo?.(read.value)).toBe("Nothing drained for 7 h. Recorded: blocked.");
    expect(alarmClosedForm.fields(beside(dry)).answers.choices).toHaveLength(1);
  });

  it("answers what was named, whatever stands by the time it is read", () => {
    const read = alarmClosedForm.read({ ...said, answers: `dry:r1@${until}` }, beside(low));
    expect(read).toMatchObject({ entry: { payload: { answers: [{ key: "dry:r1", until }] } } });
  });

  it.each([
    ["", "alarm-none"],
    ["dry:r1@soon", "choice-unknown"],
    ["dry:r1@99999999999999999", "choice-unknown"],
  ])("an answer of %j is refused: %s", (answers, code) => {
    expect(alarmClosedForm.read({ ...said, answers }, beside())).toMatchObject({
      ok: false,
      refusals: [{ code, field: "answers" }],
    });
  });
});

describe("a usual level", () => {
  it("opens with the row that the alarm is of", () => {
    expect(usualLevelForm.fields(beside(dry, low)).row.initial).toBe("low");
    expect(usualLevelForm.fields(beside(dry)).row.initial).toBeUndefined();
  });

  it.each([
    ["60", "+30", []],
    ["0", "+30", ["usual-level-zero"]],
    ["?", "+30", ["text-missing"]],
    ["60", "5 nov 2026", ["day-before-decision"]],
  ])("of %s mL until %s: %j", (level, day, codes) => {
    const texts = { row: "low", level, until: day, acceptedBy: "Dr Example" };
    const read = usualLevelForm.read(texts, beside(low));
    expect(read.ok ? [] : read.refusals.map(({ code }) => code)).toEqual(codes);
  });
});
