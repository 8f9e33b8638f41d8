import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { readProtocolFile } from "#server/protocol/file/read-protocol-file.ts";
import { writeProtocolFile } from "#server/protocol/file/write-protocol-file.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

const written = writeProtocolFile(exampleProtocol);
const cells = Papa.parse<string[]>(written.slice(1), { skipEmptyLines: true }).data;

const read = (text: string) => readProtocolFile(new TextEncoder().encode(text), exampleProtocol);
const readCells = (changed: readonly (readonly string[])[]) => read(Papa.unparse(changed as string[][]));

const errorsOf = (reading: ReturnType<typeof read>) =>
  reading.ok ? [] : reading.errors.map(({ line, refusal }) => [line, refusalSentence(refusal)]);

/** The file with one value of a row typed otherwise, and the line that it stands in. */
function withValue(row: string, figure: string, value: string) {
  const at = cells.findIndex(([one, , other]) => one === row && other === figure);
  return {
    line: at + 1,
    changed: cells.map((line, index) => (index === at ? [...line.slice(0, 3), value] : line)),
  };
}

describe("the table as a file", () => {
  it("has the columns row, called, figure and value, and one leaf a line", () => {
    expect(cells[0]).toEqual(["row", "called", "figure", "value"]);
    expect(cells).toContainEqual(["intervals/nephrostomy", "Interval: nephrostomy", "target", "77"]);
    expect(cells).toContainEqual(["output", "Low output", "flushDoesNotComeBackMl", "-10"]);
    expect(cells).toContainEqual([
      "calls.questions/fever",
      "Question: fever",
      "instead.1.of",
      "immune suppression",
    ]);
    expect(cells).toContainEqual(["calls.hours/morning", "Hours of calls: morning", "from", "9"]);
  });

  it("read again is the table", () => expect(read(written)).toEqual({ ok: true, protocol: exampleProtocol }));

  it("as a spreadsheet saves it elsewhere, with semicolons and in another code page, is the table too", () => {
    const text = Papa.unparse(cells, { delimiter: ";" });
    const bytes = Uint8Array.from(text, (letter) => letter.charCodeAt(0));
    expect(readProtocolFile(bytes, exampleProtocol)).toEqual({ ok: true, protocol: exampleProtocol });
  });

  it("without the column called, and with others in another order, is the table too", () => {
    const turned = cells.map(([row = "", , figure = "", value = ""]) => [value, row, figure, "a note"]);
    expect(readCells(turned)).toEqual({ ok: true, protocol: exampleProtocol });
  });

  it("with words that a spreadsheet would run comes back as it was", () => {
    const protocol: Protocol = {
      ...exampleProtocol,
      flush: [{ kind: "nephrostomy", order: "=HYPERLINK(1)", source: '\'="a", b; c' }],
    };
    const text = writeProtocolFile(protocol);
    expect(text).toContain('"\'=HYPERLINK(1)"');
    expect(read(text)).toEqual({ ok: true, protocol });
  });
});

describe("a file that cannot be taken", () => {
  it.each([
    ["row", 0],
    ["figure", 2],
    ["value", 3],
  ])("has no column %s", (label, at) => {
    const cut = cells.map((line) => line.filter((_, index) => index !== at));
    expect(errorsOf(readCells(cut))).toEqual([
      [
        null,
        `No column of this file is called "${label}". It needs the columns row, figure and value, as an export has them.`,
      ],
    ]);
  });

  it("has a column twice", () => {
    const twice = cells.map((line, at) => [...line, at === 0 ? "Value" : ""]);
    expect(errorsOf(readCells(twice))).toEqual([
      [null, 'Two columns of this file are called "value". Give one of them another heading.'],
    ]);
  });

  it.each([
    ["no headings at all", "a,b,c\n1,2,3", 'No column of this file is called "row".'],
    ["nothing in it", "", "This file has no lines of the table."],
    ["headings alone", "row,called,figure,value\n", "This file has no lines of the table."],
    ["a quotation mark left open", 'row,figure,value\n"balloon,every,7\n', "A quotation mark opens in row 2"],
    ["a workbook", "PK\u0003\u0004", "This is a workbook or a zip file"],
  ])("has %s", (_, text, sentence) => {
    expect(errorsOf(read(text))).toEqual([[null, expect.stringContaining(sentence)]]);
  });

  it("was cut: what the table always has is missing", () => {
    expect(errorsOf(readCells(cells.slice(0, -1)))).toEqual([
      [
        cells.length - 1,
        'The row "visits.confirmed" has no line for its figure "source". Add one, with a blank value for "no row".',
      ],
    ]);
  });

  it.each([
    ["a target after the latest", "target", "95", "The target, 95 days, lies after the latest, 90."],
    ["a negative interval", "target", "-7", '"-7" is not between 0 and 3650.'],
    ["a value that is not understood", "target", "eleven weeks", '"eleven weeks" is not a number.'],
    ["an unknown word", "asks", "nothing", '"nothing" is not one of: exchange, review, operator\'s date.'],
  ])("has %s, told with its line", (_, figure, value, sentence) => {
    const { line, changed } = withValue("intervals/nephrostomy", figure, value);
    expect(errorsOf(readCells(changed))).toEqual([[line, expect.stringContaining(sentence)]]);
  });
});
