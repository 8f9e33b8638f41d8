import { describe, expect, it } from "vitest";
import { confirmed } from "#shared/tube/certainty.ts";
import { alarmInput, ran, wholeDays } from "#tests/factories/alarm-input.ts";
import { at } from "#tests/factories/reading.ts";
import { capped, placed } from "#tests/support/factories.ts";
import { alarmReasons } from "./alarm-reasons.ts";

const keys = (...[readings, more]: Parameters<typeof alarmInput>) =>
  alarmReasons(alarmInput(readings, more)).map(({ key }) => key);
const { protocol } = alarmInput([]);
const rows = protocol.outputRows!;

describe("a reason that somebody answered", () => {
  // The day of 70 mL ends on Mon 2 Nov at 00:00.
  it.each([
    ["a minute before its end", at("2026-11-01T23:59Z"), ["low:2026-11-01"]],
    ["at its end", at("2026-11-02T00:00Z"), []],
    ["for good", null, []],
  ])("with evidence up to %s: %j", (_name, until, expected) => {
    expect(keys(wholeDays([70]), { answered: [{ key: "low:2026-11-01", until }] })).toEqual(expected);
  });

  it("answers none of another key", () => {
    const answered = [{ key: "low:2026-11-01", until: null }];
    expect(keys(wholeDays([70, 70]), { answered })).toEqual(["low:2026-11-02"]);
  });
});

describe("the order of reasons", () => {
  it("is that of their time, whenever they were entered, and of one time that of their keys", () => {
    const first = ran("2026-11-01T09:00", "2026-11-01T10:00", 200, { leak: "soaking" });
    const second = ran("2026-11-03T09:00", "2026-11-03T10:00", 200, {
      characters: ["serosanguineous", "bloody"],
      leak: "none",
    });
    const expected = [
      "soaking-leak:r2026-11-01T09:00",
      "new-fluid:bloody:r2026-11-03T09:00",
      "new-fluid:serosanguineous:r2026-11-03T09:00",
    ];
    expect(keys([first, second])).toEqual(expected);
    expect(keys([second, first])).toEqual(expected);
  });

  it("of two emptied at one time the first of a run is the one with the smaller id, in whatever order they came", () => {
    const bloody = (id: string) =>
      ran("2026-11-01T09:00", "2026-11-01T10:00", 200, { id, characters: ["bloody"] });
    const [a, b, c] = [bloody("a"), bloody("b"), bloody("c")];
    for (const all of [
      [a, b, c],
      [c, b, a],
      [b, c, a],
    ])
      expect(keys(all)).toEqual(["new-fluid:bloody:a"]);
  });
});

describe("a table without a row", () => {
  const everything = [
    ...wholeDays([1000, 1000, 1000, 70]),
    ran("2026-11-05T00:00", "2026-11-05T07:00", 0, { characters: ["bloody"], leak: "soaking" }),
  ];

  it("says nothing of what it has no row for", () => {
    expect(keys(everything)).toEqual([
      "low:2026-11-04",
      "sudden-drop:2026-11-04",
      "dry:r2026-11-05T00:00",
      "new-fluid:bloody:r2026-11-05T00:00",
      "soaking-leak:r2026-11-05T00:00",
    ]);
    const without = (part: Partial<typeof rows>) =>
      keys(everything, { protocol: { ...protocol, outputRows: { ...rows, ...part } } });
    expect(without({ low: [] })).not.toContain("low:2026-11-04");
    expect(without({ suddenDrop: null })).not.toContain("sudden-drop:2026-11-04");
    expect(without({ dry: [] })).not.toContain("dry:r2026-11-05T00:00");
    expect(without({ newFluid: null })).not.toContain("new-fluid:bloody:r2026-11-05T00:00");
    expect(without({ low: [], suddenDrop: null, dry: [], newFluid: null })).toEqual([
      "soaking-leak:r2026-11-05T00:00",
    ]);
  });

  it("stored before there were rows of output: no reading is a reason", () => {
    expect(keys(everything, { protocol: { ...protocol, outputRows: null } })).toEqual([]);
  });

  it("without its red flags: what only they speak of is none, and nothing holds until somebody is reached", () => {
    const reasons = alarmReasons(alarmInput(everything, { protocol: { ...protocol, redFlags: [] } }));
    expect(reasons.map(({ code, untilReached }) => [code, untilReached])).toEqual([
      ["low", null],
      ["sudden-drop", null],
      ["dry", null],
      ["new-fluid", null],
    ]);
    const shut = [placed(), capped({ on: "2026-10-30", bagAtHome: confirmed(true) })];
    const more = { entries: shut, protocol: { ...protocol, redFlags: [] } };
    expect(keys([ran("2026-11-01T09:00", "2026-11-01T10:00", 0, { leak: "damp" })], more)).toEqual([]);
  });

  it("of a kind that drains an organ and has no row of volumes says nothing of them", () => {
    const entries = [placed({ kind: "venting gastrostomy" })];
    expect(keys(wholeDays([1000, 1000, 1000, 0]), { entries })).toEqual(["sudden-drop:2026-11-04"]);
  });
});

it("what was drawn off at a procedure is no output, no session and no fluid of the tube", () => {
  const aspirate = ran("2026-11-01T09:00", "2026-11-01T10:00", 1800, {
    procedureAspirate: true,
    characters: ["bloody"],
    symptoms: ["breathlessness"],
  });
  const entries = [placed({ kind: "tunnelled pleural catheter" })];
  expect(keys([aspirate], { entries })).toEqual([]);
  expect(keys([{ ...aspirate, procedureAspirate: false }], { entries })).toEqual([
    "breathless:r2026-11-01T09:00",
    "new-fluid:bloody:r2026-11-01T09:00",
    "session-over-ceiling:r2026-11-01T09:00",
  ]);
});
