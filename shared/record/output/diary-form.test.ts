import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { instant } from "#shared/day/instant.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { cellName, DIARY_ROWS } from "#shared/record/output/diary-cells.ts";
import { besideCells, diaryOpening, readDiary, rowsOfDiary } from "#shared/record/output/diary-form.ts";
import { formContext } from "#tests/factories/form-context.ts";

/** Fri 20 Nov 2026, noon in London. */
const context = formContext({
  today: day("2026-11-20"),
  now: instant(Date.parse("2026-11-20T12:00Z")),
});

type Typed = readonly [
  when: string,
  drained: string,
  flush?: string,
  characters?: string,
  leak?: string,
  otherIn?: string,
];
const typed = (rows: readonly Typed[], shared: Texts = {}): Texts => ({
  ...shared,
  ...Object.fromEntries(
    rows.flatMap(([when, drained, flush = "", characters = "", leak = "", otherIn = ""], index) => [
      [cellName("when", index + 1), when],
      [cellName("drained", index + 1), drained],
      [cellName("flush", index + 1), flush],
      [cellName("characters", index + 1), characters],
      [cellName("leak", index + 1), leak],
      [cellName("otherIn", index + 1), otherIn],
    ]),
  ),
});
const entriesOf = (texts: Texts) => {
  const read = readDiary(texts, context);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return read.entry;
};
const refusalsOf = (texts: Texts) => {
  const read = readDiary(texts, context);
  return read.ok ? [] : read.refusals.map(({ code, field }) => [field, code]);
};
const iso = (at: number | string) => new Date(at).toISOString().slice(0, 16);

const fourDays: readonly Typed[] = [
  ["14 nov 8:00", "40"],
  ["14:00", "35", "", "bil"],
  ["22:00", "30", "none"],
  ["15 nov 7:30", "~25"],
  ["14", "0"],
  ["730", "2 oz", "20"],
];

describe("a diary", () => {
  it("is a reading a row; a time without a day is of the day of the row before or of the next", () => {
    const entries = entriesOf(
      typed(fourDays, { flushEach: "10", reportedBy: "patient", measuredBy: "syringe" }),
    );
    expect(entries.map(({ to }) => iso(to))).toEqual([
      "2026-11-14T08:00",
      "2026-11-14T14:00",
      "2026-11-14T22:00",
      "2026-11-15T07:30",
      "2026-11-15T14:00",
      "2026-11-16T07:30",
    ]);
    expect(entries.map(({ gross }) => gross)).toEqual([
      { certainty: "reported", value: 40_000 },
      { certainty: "reported", value: 35_000 },
      { certainty: "reported", value: 30_000 },
      { certainty: "estimated", value: 25_000 },
      { certainty: "reported", value: 0 },
      { certainty: "reported", value: 59_147 },
    ]);
    expect(new Set(entries.map(({ reportedBy, measuredBy }) => `${reportedBy} ${measuredBy}`))).toEqual(
      new Set(["patient syringe"]),
    );
    expect(entries[1]?.characters).toEqual(["bilious"]);
  });

  it("takes the flush that is said for all where a row says none of its own; said nowhere it is not recorded", () => {
    const given = (shared: Texts) => entriesOf(typed(fourDays, shared)).map(({ flushGiven }) => flushGiven);
    const ten = { ul: 10_000, estimated: false };
    const twenty = { ul: 20_000, estimated: false };
    expect(given({ flushEach: "10" })).toEqual([ten, ten, "none", ten, ten, twenty]);
    const not = "not recorded";
    expect(given({})).toEqual([not, not, "none", not, not, twenty]);
  });

  it("takes the leak that is said for all where a row says none of its own; said nowhere it is not recorded", () => {
    const rows: readonly Typed[] = [
      ["14 nov 8:00", "40", "", "", "damp"],
      ["14:00", "35"],
      ["22:00", "30", "", "", "NONE"],
      ["730", "25", "", "", "soak"],
      ["14:00", "25", "", "", "not recorded"],
    ];
    const leaksOf = (shared: Texts) => entriesOf(typed(rows, shared)).map(({ leak }) => leak);
    expect(leaksOf({})).toEqual(["damp", "not recorded", "none", "soaking", "not recorded"]);
    expect(leaksOf({ leak: "none" })).toEqual(["damp", "none", "none", "soaking", "not recorded"]);
  });

  it("takes what else went in by row, and nothing where a row says nothing: it is no flush", () => {
    const rows: readonly Typed[] = [
      ["14 nov 8:00", "40", "10", "", "", "contrast 20, irrigation 1 oz"],
      ["14:00", "35"],
    ];
    const entries = entriesOf(typed(rows, { flushEach: "5" }));
    // 1 US fluid ounce is 29.5735295625 mL (NIST Handbook 44, Appendix C).
    expect(entries.map(({ otherIn }) => otherIn)).toEqual([
      [
        { fluid: "contrast", ul: 20_000 },
        { fluid: "irrigation", ul: 29_574 },
      ],
      [],
    ]);
    expect(entries.map(({ flushGiven }) => flushGiven)).toEqual([
      { ul: 10_000, estimated: false },
      { ul: 5000, estimated: false },
    ]);
  });

  it("echoes beside a row its leak, its own or that of all, and what went in; what to mend stands in its place", () => {
    const texts = typed(
      [
        ["14 nov 8:00", "1", "", "", "d", "con 20"],
        ["14:00", "1", "", "", "a bit", "20"],
        ["22:00", "1"],
      ],
      { leak: "soaking" },
    );
    expect(
      rowsOfDiary(texts, context, 3)
        .map(besideCells)
        .map(({ leak, otherIn }) => [leak, otherIn]),
    ).toEqual([
      [{ echo: "damp" }, { echo: "contrast 20 mL" }],
      [
        { problem: '"a bit" is not one of: none, damp, soaking, not recorded.' },
        {
          problem:
            '"20" is not understood. Type each fluid with its volume, like contrast 20, irrigation 500.',
        },
      ],
      [{ echo: "soaking" }, {}],
    ]);
    expect(refusalsOf(texts)).toEqual([
      ["leak2", "word-unknown"],
      ["otherIn2", "fluids-not-understood"],
    ]);
  });

  it("a row in which only a leak or another fluid stands is a row without its time and volume", () => {
    expect(refusalsOf({ leak1: "damp", otherIn3: "contrast 20" })).toEqual([
      ["when1", "day-missing"],
      ["drained1", "volume-missing"],
      ["when3", "day-missing"],
      ["drained3", "volume-missing"],
    ]);
  });

  it("counts each row since the last emptying, the first from what is said; a day alone is that whole day", () => {
    const from = (rows: readonly Typed[], shared: Texts = {}) =>
      entriesOf(typed(rows, shared)).map((entry) =>
        typeof entry.from === "string" ? entry.from : iso(entry.from),
      );
    const since = "since last emptying";
    expect(
      from(
        [
          ["14 nov 8:00", "40"],
          ["14:00", "35"],
        ],
        { from: "13 nov 22:00" },
      ),
    ).toEqual(["2026-11-13T22:00", since]);
    expect(
      from(
        [
          ["14 nov", "150"],
          ["15 nov", "120"],
        ],
        { from: "1 nov 8:00" },
      ),
    ).toEqual(["2026-11-14T00:00", "2026-11-15T00:00"]);
  });

  it("passes over rows in which nothing stands, also between others", () => {
    expect(
      entriesOf(
        typed([
          ["14 nov 8:00", "40"],
          ["", ""],
          ["14:00", "35"],
        ]),
      ),
    ).toHaveLength(2);
  });

  it("says each cell to mend by its row, and logs nothing", () => {
    const rows: readonly Typed[] = [
      ["14 nov 8:00", "forty"],
      ["", "35"],
      ["22:00", "", "-5", "purple"],
      ["13:00", "-10"],
    ];
    expect(refusalsOf(typed(rows, { leak: "a bit" }))).toEqual([
      ["leak", "choice-unknown"],
      ["drained1", "volume-not-understood"],
      ["when2", "day-missing"],
      ["drained3", "volume-missing"],
      ["flush3", "volume-negative"],
      ["characters3", "word-unknown"],
    ]);
    expect(refusalsOf(typed([["13:00", "-10"]], {}))).toEqual([["when1", "time-in-future"]]);
    expect(refusalsOf(typed([["11:00", "-10"]], {}))).toEqual([["drained1", "volume-negative"]]);
    expect(entriesOf(typed([["11:00", "-10"]], { basis: "already net" }))).toHaveLength(1);
  });

  it("a first row that would end before it begins is said beside its time", () => {
    expect(refusalsOf(typed([["14 nov 8:00", "40"]], { from: "14 nov 9:00" }))).toEqual([
      ["when1", "reading-ends-before-start"],
    ]);
  });

  it("with nothing typed asks for the first row", () => {
    expect(refusalsOf({ flushEach: "10" })).toEqual([["when1", "nothing-said"]]);
  });

  it("what was pasted and does not stand in the rows yet is not lost by saving", () => {
    expect(refusalsOf({ ...typed([["14 nov 8:00", "40"]]), pasted: "14:00 35" })).toEqual([
      ["pasted", "pasted-not-in-rows"],
    ]);
  });

  it("takes twenty rows", () => {
    const rows = Array.from({ length: DIARY_ROWS }, (): Typed => ["8:00", "10"]);
    const entries = entriesOf(typed([["31 oct 8:00", "10"], ...rows.slice(1)]));
    expect(entries).toHaveLength(20);
    expect(iso(entries.at(-1)!.to)).toBe("2026-11-19T08:00");
    expect(Object.keys(diaryOpening(context))).toHaveLength(20 * 6 + 10);
  });

  it("echoes beside each time what will be stored, a whole day as such", () => {
    const texts = typed([
      ["14 nov 8:00", "1"],
      ["730", "1"],
      ["14 nov", "150"],
      ["25 oct 1:30", "1"],
    ]);
    const echoes = rowsOfDiary(texts, context, 4).map((row) => besideCells(row).when);
    expect(echoes).toEqual([
      { echo: "Sat 14 Nov 2026, 08:00" },
      { echo: "Sun 15 Nov 2026, 07:30" },
      { echo: "Sat 14 Nov 2026, 00:00 to 24:00" },
      {
        echo: "Sun 25 Oct 2026, 01:30",
        doubt: '01:30 comes twice that night: the earlier was taken. Type "later" after it for the other.',
      },
    ]);
  });

  it("a row goes by the last row before it whose time can be read", () => {
    const texts = typed([
      ["14 nov 8:00", "1"],
      ["soon", "1"],
      ["14:00", "1"],
    ]);
    expect(besideCells(rowsOfDiary(texts, context, 3)[2]!).when).toEqual({
      echo: "Sat 14 Nov 2026, 14:00",
    });
  });
});
