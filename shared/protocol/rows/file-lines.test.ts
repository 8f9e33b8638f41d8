import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { fileLines } from "./file-lines.ts";
import { readFileLines, type TypedLine } from "./read-file-lines.ts";

const lines: readonly TypedLine[] = fileLines(exampleProtocol).map(({ row, figure, value }, at) => ({
  line: at + 2,
  row,
  figure,
  value: String(value),
}));

const lineOf = (row: string, figure: string): TypedLine =>
  lines.find((line) => line.row === row && line.figure === figure)!;

const withValue = (row: string, figure: string, value: string): readonly TypedLine[] =>
  lines.map((line) => (line === lineOf(row, figure) ? { ...line, value } : line));

const errorsOf = (typed: readonly TypedLine[]) => {
  const read = readFileLines(typed, exampleProtocol);
  return read.ok ? [] : read.errors.map(({ line, refusal }) => [line, refusalSentence(refusal)]);
};

describe("the lines of a file of the table", () => {
  it("say every leaf of every row once, in words for readers too", () => {
    expect(
      fileLines(exampleProtocol).find(
        ({ row, figure }) => row === "intervals/nephrostomy" && figure === "target",
      ),
    ).toEqual({
      row: "intervals/nephrostomy",
      called: "Interval: nephrostomy",
      figure: "target",
      value: 77,
    });
    expect(new Set(lines.map(({ row, figure }) => `${row} ${figure}`)).size).toBe(lines.length);
  });

  it("read back are the table", () => {
    expect(readFileLines(lines, exampleProtocol)).toEqual({ ok: true, protocol: exampleProtocol });
  });

  it("keep the head of the version that is given", () => {
    const head = { ...exampleProtocol, version: 7, intervals: [], balloon: null };
    expect(readFileLines(lines, head)).toEqual({ ok: true, protocol: { ...exampleProtocol, version: 7 } });
  });

  it("nephrostomy from 63 / 77 / 90 to 49 / 63 / 77", () => {
    const figures = { earliest: "49", target: "63", latest: "77" };
    const typed = lines.map((line) => ({
      ...line,
      value:
        line.row === "intervals/nephrostomy"
          ? ((figures as Record<string, string>)[line.figure] ?? line.value)
          : line.value,
    }));
    const read = readFileLines(typed, exampleProtocol);
    expect(read.ok && read.protocol.intervals.find(({ id }) => id === "nephrostomy")).toMatchObject({
      earliest: 49,
      target: 63,
      latest: 77,
    });
  });

  it("without those of a row of a list drop it; a row of blank values is no row", () => {
    const read = readFileLines(
      lines
        .filter(({ row }) => row !== "flush/nephrostomy")
        .map((line) => (line.row === "balloon" ? { ...line, value: "" } : line)),
      exampleProtocol,
    );
    expect(read).toEqual({
      ok: true,
      protocol: {
        ...exampleProtocol,
        balloon: null,
        flush: exampleProtocol.flush.filter(({ kind }) => kind !== "nephrostomy"),
      },
    });
  });

  it("order the rows of a list by their place", () => {
    const places = withValue("flush/nephrostomy", "place", "999");
    const read = readFileLines(places, exampleProtocol);
    expect(read.ok && read.protocol.flush.at(-1)?.kind).toBe("nephrostomy");
  });

  it("order what follows the attempts by its place, and know each by what is tried", () => {
    const places = withValue("calls.rungs/alternate contact", "place", "3").map((line) =>
      line.row === "calls.rungs/referrer and family doctor" && line.figure === "place"
        ? { ...line, value: "1" }
        : line,
    );
    const read = readFileLines(places, exampleProtocol);
    expect(read.ok && read.protocol.calls?.rungs.map(({ rung }) => rung)).toEqual([
      "referrer and family doctor",
      "letter",
      "alternate contact",
      "physician",
    ]);
  });
});

describe("lines that cannot be taken, each with its number and what to mend", () => {
  const nephrostomy = lineOf("intervals/nephrostomy", "target");

  it.each([
    [
      "an unknown row",
      [...lines, { line: 999, row: "intervalls/x", figure: "target", value: "1" }],
      999,
      'The table has no row "intervalls/x". Check how it is written, or open the draft again.',
    ],
    [
      "a list without its row",
      [...lines, { line: 999, row: "intervals", figure: "target", value: "1" }],
      999,
      'The table has no row "intervals". Check how it is written, or open the draft again.',
    ],
    [
      "an unknown figure",
      [...lines, { ...nephrostomy, line: 999, figure: "taget" }],
      999,
      'The row "intervals/nephrostomy" has no figure "taget". Check how it is written, or take the line out.',
    ],
    [
      "a figure missing",
      lines.filter((line) => line !== nephrostomy),
      lineOf("intervals/nephrostomy", "place").line,
      'The row "intervals/nephrostomy" has no line for its figure "target". Add one, with a blank value for "no row".',
    ],
    [
      "a figure twice",
      [...lines, { ...nephrostomy, line: 999 }],
      999,
      `The figure "target" of "intervals/nephrostomy" stands in line ${nephrostomy.line} already. Keep one of the two lines.`,
    ],
    [
      "a value not understood",
      withValue("intervals/nephrostomy", "target", "11 weeks"),
      nephrostomy.line,
      '"11 weeks" is not a number. Type it in digits, like 14 or 0.5.',
    ],
    [
      "a target after the latest",
      withValue("intervals/nephrostomy", "target", "95"),
      nephrostomy.line,
      "The target, 95 days, lies after the latest, 90. Make the target 90 or less, or the latest 95 or more.",
    ],
    [
      "a negative interval",
      withValue("intervals/nephrostomy", "target", "-7"),
      nephrostomy.line,
      '"-7" is not between 0 and 3650. Check the number.',
    ],
    [
      "a row that the table always has",
      lines.filter(({ row }) => row !== "planning.besideStent"),
      null,
      'The file has no line of "Removal of a nephrostomy beside a stent", which the table always has. Bring its lines, with blank values for "no row".',
    ],
    [
      "a row that names another",
      withValue("intervals/nephrostomy", "id", "kidney"),
      lineOf("intervals/nephrostomy", "id").line,
      'The lines of "intervals/nephrostomy" name the row "kidney". Write the same in the column row and here.',
    ],
    [
      "a place that is none",
      withValue("intervals/nephrostomy", "place", "first"),
      lineOf("intervals/nephrostomy", "place").line,
      '"first" is not a whole number. Type one without decimals, like 14.',
    ],
    [
      "a question's red flag that the table has not",
      withValue("calls.questions/fever", "instead.1.redFlag", "fevers"),
      lineOf("calls.questions/fever", "instead.1.redFlag").line,
      'The question "fever" opens the red flag "fevers", and the table would have no row of that name. Let the question name one that there is, or keep or add that row.',
    ],
    [
      "hours that are no time",
      withValue("calls.hours/evening", "to", "17"),
      lineOf("calls.hours/evening", "to").line,
      "From 17 to 17 is no time at all. Type an end that comes later.",
    ],
    [
      "a kind in two rows",
      withValue("outputRows.dry/2", "kinds", "nephrostomy"),
      lineOf("outputRows.dry/2", "kinds").line,
      expect.stringContaining('"nephrostomy" has a row already'),
    ],
  ] as const)("%s", (_, typed, line, sentence) => {
    const errors = errorsOf(typed);
    expect(errors).toContainEqual([line, sentence]);
    expect(errors.every(([at]) => at === line || at === lineOf("outputRows.dry/1", "kinds").line)).toBe(true);
  });

  it("all of them at once, in the order of the lines, and nothing is taken", () => {
    const typed = withValue("intervals/nephrostomy", "target", "x").map((line) =>
      line.row === "balloon" && line.figure === "every" ? { ...line, value: "0" } : line,
    );
    expect(errorsOf(typed).map(([line]) => line)).toEqual([
      nephrostomy.line,
      lineOf("balloon", "every").line,
    ]);
  });
});
