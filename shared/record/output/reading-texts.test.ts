import { describe, expect, it } from "vitest";
import type { Texts } from "#shared/record/field-spec.ts";
import { readingForm } from "#shared/record/output/reading-form.ts";
import { readingTexts } from "#shared/record/output/reading-texts.ts";
import { formContext } from "#tests/factories/form-context.ts";

const context = formContext();
const blank = Object.fromEntries(
  Object.entries(readingForm.fields(context)).map(([name, { initial = "" }]) => [name, initial]),
);

function entryOf(typed: Texts) {
  const read = readingForm.read({ ...blank, drained: "0", ...typed }, context);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return read.entry;
}

describe("a reading as it would be typed", () => {
  it.each<[string, Texts]>([
    ["nothing drained", {}],
    ["an estimate in ounces, told by a carer", { drained: "~2 oz", reportedBy: "the carer" }],
    ["an unknown volume, flush not recorded", { drained: "?", flushGiven: "?" }],
    ["flush in parts, some drawn back", { drained: "35", flushGiven: "3 x 10", flushWithdrawn: "~5" }],
    [
      "its own start, another fluid, already net",
      {
        drained: "-10",
        basis: "already net",
        from: "yesterday 23:50",
        to: "today 08:05",
        otherIn: "contrast 20, irrigation 500",
      },
    ],
    [
      "what was seen",
      {
        drained: "600",
        characters: "purulent, debris",
        leak: "damp",
        measuredBy: "syringe",
        procedureAspirate: "yes",
      },
    ],
    ["air through a chest tube", { airLeak: "present", swing: "not seen" }],
    ["a session, with what was felt", { symptoms: "cough, breathless" }],
    ["a session in which nothing was felt", { symptoms: "none" }],
    ["the second of an hour that came twice", { to: "25 oct 1:30 later", from: "25 oct 1:30" }],
  ])("reads again as the same: %s", (_name, typed) => {
    const entry = entryOf(typed);
    const again = readingTexts({ id: "r1", tubeId: "t1", ...entry }, context.zone);
    expect(entryOf(again)).toEqual(entry);
  });
});
