import { describe, expect, it } from "vitest";
import { refusalSentence } from "#shared/words/refusals.ts";
import { readCases } from "./read-cases.ts";

const size = {
  name: "8 F",
  note: "8 / 3 = 2.67",
  compute: "length",
  given: { thing: "tube outside", typed: "8 f" },
  expect: { F: "8 F" },
};
const steps = {
  name: "steps",
  note: "none",
  compute: "open-steps",
  given: {
    zone: "Europe/London",
    start: "2026-08-14",
    today: "+63",
    entries: [{ form: "placed", typed: { kind: "pcn l", size: "8 f" } }],
  },
  expect: { order: [] },
};

const sentencesFor = (text: string): readonly string[] => {
  const read = readCases(text);
  return read.ok ? [] : read.refusals.map(refusalSentence);
};
const mended = (given: object) => JSON.stringify([{ ...steps, given: { ...steps.given, ...given } }]);

describe("a file of worked cases", () => {
  it("is read, with a mark of byte order before it too", () => {
    const text = JSON.stringify([size, steps]);
    expect(readCases(text)).toEqual({ ok: true, cases: [size, steps] });
    expect(readCases(`\uFEFF${text}`).ok).toBe(true);
  });

  it.each([
    ["no JSON", "[{ name: 'x' }]", "The file is no JSON."],
    ["an object", JSON.stringify(size), "The file holds no list of cases."],
    ["an empty list", "[]", "The file holds no list of cases."],
    [
      "a case without a name",
      JSON.stringify([size, { ...size, name: " " }]),
      "Case 2 of the list has no name.",
    ],
    ["no case at all", "[1]", "Case 1 of the list has no name."],
    [
      "two cases of one name",
      JSON.stringify([size, { ...size, name: "8 F " }]),
      'Two cases are called "8 F".',
    ],
    [
      "an unknown computation",
      JSON.stringify([{ ...size, compute: "lenght" }]),
      'Choose "compute" from: length, tube-state, open-steps, passage, chain, planned-exchange, net-output, output-days, criterion, trend, alarm, window, slots, calls, tube-out, red-flag.',
    ],
    [
      "a name that no case has",
      JSON.stringify([{ ...size, expected: {} }]),
      'Case "8 F": there is no "expected" in a case.',
    ],
    [
      "a name that is not given",
      JSON.stringify([{ ...size, given: { ...size.given, unit: "F" } }]),
      'Case "8 F": there is no "unit" in given.',
    ],
    [
      "no note",
      JSON.stringify([{ ...size, note: undefined }]),
      'Case "8 F": note is missing or is not of its kind.',
    ],
    ["nothing expected", JSON.stringify([{ ...size, expect: {} }]), 'Case "8 F": expect is missing'],
    [
      "a thing without a size",
      JSON.stringify([{ ...size, given: { thing: "hub", typed: "" } }]),
      "given.thing is none",
    ],
    [
      "a form that is none",
      mended({ entries: [{ form: "exchange", typed: {} }] }),
      "given.entries.0.form is none",
    ],
    [
      "a number for what is typed",
      mended({ entries: [{ form: "placed", typed: { size: 8 } }] }),
      "entries.0.typed.size",
    ],
    ["no entry", mended({ entries: [] }), "given.entries is missing"],
    ["a day that does not exist", mended({ start: "2027-02-29" }), "given.start is missing"],
    ["a day before the start", mended({ today: "-3" }), "given.today is missing"],
    ["a zone that does not exist", mended({ zone: "Mars/Base" }), "given.zone is missing"],
    ["a tube beside open-steps", mended({ tube: "left" }), 'there is no "tube" in given'],
    [
      "a closure that ends before it starts",
      mended({
        calendar: { openWeekdays: [1], closures: [{ from: "2026-08-03", to: "2026-08-02", reason: "x" }] },
      }),
      "given.calendar.closures.0.to",
    ],
  ])("with %s is told what to mend", (_, text, sentence) => {
    const sentences = sentencesFor(text);
    expect(sentences).toHaveLength(1);
    expect(sentences[0]).toContain(sentence);
  });

  it("tells everything at once", () => {
    const text = JSON.stringify([
      { ...size, note: 1 },
      { ...steps, compute: "x" },
      { ...size, name: "" },
    ]);
    expect(sentencesFor(text)).toHaveLength(3);
  });
});
