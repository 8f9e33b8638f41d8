import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { calendar } from "#tests/support/told.ts";
import { readCases } from "./read-cases.ts";
import { runCase } from "./run-case.ts";

const books = { protocol: exampleProtocol, calendar: calendar() };
const placed = (tube?: string) => ({ form: "placed", tube, typed: { kind: "pcn l", size: "8 f" } });

function run(entries: readonly object[], more: object = {}) {
  const given = { zone: "Europe/London", start: "2026-08-14", today: "+77", entries, ...more };
  const one = { name: "one", note: "", compute: "tube-state", given, expect: { status: "in" } };
  const read = readCases(JSON.stringify([one]));
  if (!read.ok) throw new Error(read.refusals.map(refusalSentence).join(" "));
  const [result] = read.cases.map((worked) => runCase(worked, books));
  if (result === undefined) throw new Error("no result");
  return result;
}

const says = (result: ReturnType<typeof run>): string =>
  result.outcome === "cannot run" ? refusalSentence(result.refusal) : result.outcome;

describe("a worked case", () => {
  it("needs no word for an only tube, and takes any for several", () => {
    expect(says(run([placed(), { form: "exchanged", on: "+63", typed: {} }]))).toBe("agrees");
    expect(says(run([placed("a"), placed("b")], { tube: "b" }))).toBe("agrees");
  });

  it("is typed in the clinic's zone, at noon unless it says when", () => {
    const late = { form: "fell out", on: "+1", typed: { when: "today 13:00", whole: "yes" } };
    expect(run([placed(), late])).toMatchObject({
      outcome: "differs",
      got: { refused: ["time-in-future"], entry: 2 },
    });
    expect(run([placed(), { ...late, at: "13:30" }])).toMatchObject({ got: { status: "out, undecided" } });
  });

  it("that a form refuses differs, unless that is expected, and says what the form said", () => {
    const result = run([{ form: "placed", typed: { kind: "pcn", size: "8" } }]);
    expect(result).toMatchObject({
      outcome: "differs",
      differences: [{ at: "status", expected: "in", got: null }],
      got: { refused: ["length-needs-unit"], entry: 1 },
    });
  });

  it("that a decision refuses is refused by its code", () => {
    const capped = { form: "capped", on: "+3", typed: {} };
    expect(run([placed(), capped, { ...capped, on: "+4" }])).toMatchObject({
      got: { refused: ["already-capped"], entry: 3 },
    });
  });

  it.each([
    [
      "a field that the form lacks",
      [placed(), { form: "called", on: "+1", typed: { reached: "yes" } }],
      'Entry 2, the form "called", has no field "reached". It has: outcome, note, when.',
    ],
    [
      "a tube that nothing opened",
      [placed("left"), { form: "capped", tube: "right", typed: {} }],
      'called "right"',
    ],
    [
      "no word for one of several",
      [placed("a"), placed("b")],
      'Say in "tube" which tube is meant. There are: a, b.',
    ],
    [
      "an hour that clocks skip",
      [{ ...placed(), on: "2027-03-28", at: "01:30" }],
      "There is no 01:30 on 2027-03-28",
    ],
    ["a time that is none", [{ ...placed(), at: "noon" }], '"noon" is not understood as a time'],
  ])("with %s cannot be run, and says why", (_, entries, sentence) => {
    expect(says(run(entries))).toContain(sentence);
  });
});

describe("things and types that are typed in a case", () => {
  const ran = (compute: string, given: object) => {
    const one = { name: "one", note: "", compute, given, expect: { bySize: "passes" } };
    const read = readCases(JSON.stringify([one]));
    if (!read.ok) throw new Error(read.refusals.map(refusalSentence).join(" "));
    const [result] = read.cases.map((worked) => runCase(worked, books));
    if (result === undefined) throw new Error("no result");
    return result;
  };
  const record = { zone: "Europe/London", start: "2026-08-14", today: "+77", entries: [placed()] };
  const wire = { sort: "wire", name: "Thin", outside: ".018 in" };

  it("take no field that their form does not have", () => {
    const things = [
      { sort: "wire", typed: { outside: ".035 in" } },
      { sort: "tube", typed: { size: "8 f" } },
    ];
    expect(says(ran("chain", { things }))).toContain('Entry 2, the form "tube", has no field "size".');
    const shelf = [wire, { ...wire, size: ".018 in" }];
    expect(says(ran("planned-exchange", { ...record, plan: {}, shelf }))).toContain(
      'Entry 2, the form "shelf", has no field "size".',
    );
    expect(says(ran("planned-exchange", { ...record, plan: { bore: "1 mm" } }))).toContain(
      'The form "exchange planned", has no field "bore".',
    );
  });

  it("are refused with their place in the list", () => {
    expect(ran("planned-exchange", { ...record, plan: {}, shelf: [wire, wire] })).toMatchObject({
      got: { refused: ["shelf-name-taken"], entry: 2 },
    });
    const things = [
      { sort: "wire", typed: { outside: ".018 in" } },
      { sort: "tube", typed: { outside: "8" } },
    ];
    expect(ran("chain", { things })).toMatchObject({ got: { refused: ["length-needs-unit"], entry: 2 } });
  });
});
