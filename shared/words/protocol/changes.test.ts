import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { protocolChanges } from "./changes.ts";

const nephrostomy = exampleProtocol.intervals.map((row) =>
  row.id === "nephrostomy" ? { ...row, earliest: 49, target: 63, latest: 77 } : row,
);

describe("what a draft tells otherwise", () => {
  it("nephrostomy from 63 / 77 / 90 to 49 / 63 / 77", () => {
    expect(protocolChanges(exampleProtocol, { ...exampleProtocol, intervals: nephrostomy })).toEqual([
      {
        head: "Intervals, in days",
        row: "nephrostomy",
        stood: "earliest 63; target 77; latest 90",
        drafted: "earliest 49; target 63; latest 77",
        address: "intervals/nephrostomy",
      },
    ]);
  });

  it("a row that is emptied, and one that is filled", () => {
    const stood =
      "first looked at on day 14 to 28, then every 7 days; a loss over 0.5 mL is a question, 2 in a row an alarm; filled with water, not saline or air (source 15; rest CP)";
    const row = { head: "Flush, balloon, tip and anchors", row: "Balloon water" };
    const without = { ...exampleProtocol, balloon: null };
    expect(protocolChanges(exampleProtocol, without)).toEqual([
      { ...row, stood, drafted: null, address: "balloon" },
    ]);
    expect(protocolChanges(without, exampleProtocol)).toEqual([
      { ...row, stood: null, drafted: stood, address: "balloon" },
    ]);
  });

  it("an interval that is dropped tells the days that it had, and not those that it had not", () => {
    const intervals = exampleProtocol.intervals.filter(({ id }) => id !== "surgical drain taken over");
    expect(protocolChanges(exampleProtocol, { ...exampleProtocol, intervals })).toEqual([
      {
        head: "Intervals, in days",
        row: "surgical drain taken over",
        stood: "asks for review; target 7; latest 60; immature under 14; source CP",
        drafted: null,
        address: null,
      },
    ]);
  });

  it("no rows of calls at all: each that stood is dropped", () => {
    const rows = protocolChanges(exampleProtocol, { ...exampleProtocol, calls: null });
    expect(rows.filter(({ head }) => head === "Calls").map(({ row }) => row)).toEqual([
      "Calls of a collection drain",
      "Calls of a trial",
      "Calls before an exchange",
      "Calls after a removal",
      "Calls about a diary that stops",
      "Not reached",
      "Still not reached: alternate contact",
      "Still not reached: letter",
      "Still not reached: referrer and family doctor",
      "Still not reached: physician",
      "Hours of calls: morning",
      "Hours of calls: afternoon",
      "Hours of calls: evening",
      "Whereabouts of an inpatient",
    ]);
    const questions = exampleProtocol.calls!.questions.map(({ id }) => `Question: ${id}`);
    expect(rows.filter(({ head }) => head === "Questions of a call").map(({ row }) => row)).toEqual(
      questions,
    );
    expect(rows).toHaveLength(14 + questions.length);
    expect(rows.every(({ drafted }) => drafted === null)).toBe(true);
  });

  it("what is asked, of which tubes, and another answer: the question by its name", () => {
    const calls = exampleProtocol.calls!;
    const questions = calls.questions.map((row) =>
      row.id === "draining" ? { ...row, asks: "Does it drain?", roles: [], opensOn: "yes" as const } : row,
    );
    expect(protocolChanges(exampleProtocol, { ...exampleProtocol, calls: { ...calls, questions } })).toEqual([
      {
        head: "Questions of a call",
        row: "Question: draining",
        stood:
          'Is anything draining? Asked of each tube that is open: role collection, drains an organ, venting. No: red flag "dry"; record "output" (source CP)',
        drafted:
          'Does it drain? Asked of each tube that is open. Yes: red flag "dry"; record "output" (source CP)',
        address: "calls.questions/draining",
      },
    ]);
  });

  it("the same rows in another order", () => {
    const redFlags = exampleProtocol.redFlags.toReversed();
    const [told, ...more] = protocolChanges(exampleProtocol, { ...exampleProtocol, redFlags });
    expect(told?.row).toBe("Order of the rows");
    expect(more).toEqual([]);
  });

  it("nothing where nothing differs, whatever the version", () => {
    expect(protocolChanges(exampleProtocol, { ...exampleProtocol, version: 8 })).toEqual([]);
  });
});
