import { describe, expect, it } from "vitest";
import { zone } from "#shared/day/instant.ts";
import { type FieldSpec, readField, readFields, type Texts } from "#shared/record/field-spec.ts";
import { callingContext } from "#tests/factories/calling-context.ts";
import { placed } from "#tests/support/factories.ts";
import { pressKeys } from "#tests/support/press-keys.ts";
import { callingForm, opened, questionField } from "./calling-form.ts";

const context = callingContext();
const read = (texts: Texts, beside = context) => callingForm.read(texts, beside);
const entry = (texts: Texts, beside = context) => {
  const result = read(texts, beside);
  if (!result.ok) throw new Error(JSON.stringify(result.refusals));
  return result.entry;
};
const codes = (texts: Texts) => {
  const result = read(texts);
  return result.ok ? [] : result.refusals.map(({ code, field }) => [code, field]);
};
const reached = { outcome: "reached the patient" };

describe("a call in keys", () => {
  /** The most that a call without a word to report may take, with its output, which takes 15 in its own form. */
  const MOST_KEYS = 80 - 15;

  it.each([
    ["one nephrostomy", [placed()]],
    ["a drain of a collection", [placed({ kind: "abscess drain", side: "not sided" })]],
    ["two tubes, within twice as many", [placed(), placed({ tube: "tube-2", number: 2, side: "right" })]],
  ] as const)("%s: each question answered", (name, entries) => {
    const beside = callingContext(entries);
    const fields: Readonly<Record<string, FieldSpec<never>>> = callingForm.fields(beside) as never;
    const answers = beside.questions.map(({ id }) => (id === "draining" || id === "flush" ? "y" : "n"));
    const keys = `r\t\t\t\t${answers.join("\t")}\t\n`;
    expect(keys.length).toBeLessThanOrEqual(name.startsWith("two") ? MOST_KEYS * 2 : MOST_KEYS);
    const call = entry(pressKeys(fields, keys), beside);
    expect(call).toMatchObject({ outcome: "reached the patient", handed: null, number: "555 0117" });
    expect(call.answers).toHaveLength(beside.questions.length);
  });

  it("one that reached nobody takes three", () => {
    const fields: Readonly<Record<string, FieldSpec<never>>> = callingForm.fields(context) as never;
    expect(entry(pressKeys(fields, "v\t\t\n"))).toMatchObject({ outcome: "voicemail", answers: [] });
  });
});

describe("what a call says", () => {
  it("now, by the number that stands there, to whom the page began with", () => {
    expect(entry({ outcome: "no answer" })).toMatchObject({
      time: "15:30",
      number: "555 0117",
      to: "the patient",
      back: null,
      answers: [],
      handed: null,
    });
  });

  it("when they asked to be rung back", () => {
    expect(entry({ outcome: "call back", backOn: "tomorrow", backAt: "6 pm" }).back).toEqual({
      on: "2026-11-07",
      at: "18:00",
    });
    expect(entry({ outcome: "call back", backOn: "+3" }).back).toEqual({ on: "2026-11-09", at: null });
  });

  it("what was answered, with what was not asked left out", () => {
    const { answers } = entry({ ...reached, "ask-fever": "?", "ask-1-skin": "y", handedTo: "Dr Example" });
    expect(answers.map(({ question, says }) => [question.id, question.tube?.number ?? null, says])).toEqual([
      ["fever", null, "does not know"],
      ["skin", 1, "yes"],
    ]);
  });

  it("whom a red flag was handed to, or that nobody has it yet", () => {
    const flagged = { ...reached, "ask-fever": "y" };
    expect(entry({ ...flagged, handedTo: "Dr Example" }).handed).toEqual({ to: "Dr Example" });
    expect(entry({ ...flagged, handedTo: "nobody yet" }).handed).toEqual({ to: null });
    expect(entry({ ...flagged, handedTo: "Nobody" }).handed).toEqual({ to: null });
  });
});

describe("what is to mend in a call", () => {
  it.each([
    [{ outcome: "refused", "ask-fever": "n" }, "answers-without-contact", "ask-fever"],
    [{ ...reached, "ask-fever": "y" }, "flag-without-person", "handedTo"],
    [{ ...reached, "ask-fever": "n", handedTo: "Dr Example" }, "handed-without-flag", "handedTo"],
    [{ outcome: "call back" }, "call-back-without-day", "backOn"],
    [{ outcome: "no answer", number: "55 call her" }, "number-not-rung", "number"],
  ] as const)("%j: %s", (texts, code, field) => expect(codes(texts)).toContainEqual([code, field]));
});

describe("what may be a slip is asked and blocks nothing", () => {
  it("not draining, and 400 mL entered", () => {
    const beside = callingContext([placed()], "400 mL is entered for this tube. Which is right?");
    const field = callingForm.fields(beside)["ask-1-draining"]!;
    expect(readField(field, "no").doubt).toBe("400 mL is entered for this tube. Which is right?");
    expect(readField(field, "yes").doubt).toBeUndefined();
    expect(entry({ ...reached, "ask-1-draining": "n", handedTo: "Dr Example" }, beside).answers).toHaveLength(
      1,
    );
  });

  it("an answer that they do not know, where a red flag hangs on it", () => {
    const fields = callingForm.fields(context);
    expect(readField(fields["ask-fever"]!, "?").doubt).toBe("not known is not well: find out, or ring again");
    expect(readField(fields["ask-fever"]!, "no").doubt).toBeUndefined();
    expect(readField(fields["ask-1-last%20volume"]!, "?").doubt).toBeUndefined();
  });

  it("a time at night", () => {
    const { backAt } = callingForm.fields(context);
    expect(readField(backAt, "3:00").doubt).toBe(
      "outside of the hours in which somebody is rung, 09:00 to 20:00",
    );
    expect(readField(backAt, "18:00").doubt).toBeUndefined();
    // London is seven hours ahead of Denver in winter.
    const clocks = { clinic: context.zone, patient: zone("America/Denver") };
    const away = callingForm.fields({ ...context, clocks }).backAt;
    expect(readField(away, "10:00").doubt).toBe(
      "outside of the hours in which somebody is rung, 09:00 to 20:00 by the patient's clock, which shows 03:00 then",
    );
    expect(readField(away, "23:00").doubt).toBeUndefined();
  });
});

describe("the questions of a form", () => {
  it("have names of their own, also for several tubes, without blanks", () => {
    const { questions } = callingContext([placed(), placed({ tube: "tube-2", number: 2 })]);
    const names = questions.map(questionField);
    expect(new Set(names).size).toBe(names.length);
    expect(names.filter((name) => /\s/.test(name))).toEqual([]);
  });

  it("open a red flag by what can be read so far", () => {
    const reading = readFields(callingForm.fields(context), { ...reached, "ask-1-come%20out": "yes" });
    if (!reading.ok) throw new Error("unread");
    expect(opened(context.questions, reading.values).map(({ id }) => id)).toEqual(["come out"]);
  });
});
