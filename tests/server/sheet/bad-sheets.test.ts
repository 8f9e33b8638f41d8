import { describe, expect, it } from "vitest";
import { acts } from "#db/schema/acts.ts";
import { events } from "#db/schema/events.ts";
import { patients } from "#db/schema/patients.ts";
import { sheets } from "#db/schema/sheets.ts";
import type { Database } from "#db/sqlite.ts";
import { loadSheet } from "#server/sheet/load-sheet.ts";
import { readSheet } from "#server/sheet/read-sheet.ts";
import { sheetReading, standSheet } from "#server/sheet/stand-sheet.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { testDatabase } from "#tests/support/database.ts";
import { broughtIn, kept } from "#tests/support/sheet.ts";

const HEADINGS = "name,mrn,tube,size (Fr),placed";
const ROW = '"Brackenfold, Ottoline",004711,PCN L,8,14/3/26';
const LIST = `${HEADINGS}\r\n${ROW}\r\n`;

/** Everything that bringing a list in can write. */
const written = (db: Database) =>
  [acts, events, patients].map((table) => db.orm.select().from(table).all().length);

function sentencesOf(error: unknown): readonly string[] {
  if (!(error instanceof DomainError)) throw error;
  return error.refusals.map(refusalSentence);
}

/** What is said of a file that is no list; nothing of it is kept. */
function saidOfFile(file: string | Uint8Array): readonly string[] {
  using db = testDatabase();
  try {
    kept(db, file);
  } catch (error) {
    expect(db.orm.select().from(sheets).all()).toEqual([]);
    expect(written(db)).toEqual([0, 0, 0]);
    return sentencesOf(error);
  }
  throw new Error("the file was read");
}

/** What is said of the only row of a list; it does not come in. */
async function saidOfRow(list: string): Promise<readonly string[]> {
  using db = testDatabase();
  const sheet = loadSheet(db, kept(db, list, { dateOrder: "day first" }));
  const [standing] = await standSheet(db, sheet);
  await expect(broughtIn(db, list, { dateOrder: "day first" })).rejects.toThrow("nothing-to-bring-in");
  expect(written(db)).toEqual([0, 0, 0]);
  if (standing?.stands !== "set aside") throw new Error("the row comes in");
  return standing.refusals.map(({ refusal }) => refusalSentence(refusal));
}

const bytes = (...values: number[]): Uint8Array => Uint8Array.from(values);
const manyColumns = Array.from({ length: 10_000 }, (_, place) => `column ${place}`).join(",");
const MEGABYTE = 1 << 20;

describe("a file that is no list is refused in one sentence, and nothing of it is kept", {
  timeout: 120_000,
}, () => {
  const noRows = "There are no rows here. Bring a list with a line of headings and the tubes below it.";
  const noList = (what: string): string =>
    `This is ${what}, not a list as text. Open it in the spreadsheet, save the sheet as CSV, and bring that.`;

  it.each<[string, string | Uint8Array, string]>([
    ["empty", "", noRows],
    ["blank lines only", "\r\n,,,\r\n \r\n", noRows],
    ["headings only", `${HEADINGS}\r\n`, noRows],
    ["headings twice and nothing else", `${HEADINGS}\r\n${HEADINGS}\r\n`, noRows],
    ["a zip named .csv", bytes(0x50, 0x4b, 3, 4, 20, 0, 6, 0), noList("a workbook or a zip file")],
    ["an old workbook", bytes(0xd0, 0xcf, 0x11, 0xe0, 0xa1), noList("a workbook of an old kind")],
    ["a PDF", "%PDF-1.7 ...", noList("a PDF")],
    ["NUL bytes", `${HEADINGS}\r\n\0\0${ROW}`, noList("no text")],
    [
      "10,000 columns",
      `${HEADINGS},${manyColumns}\r\n${ROW},${manyColumns}`,
      "This has 10005 columns; a list of tubes has at most 100. Check that the right sheet was saved.",
    ],
    [
      "too many rows",
      `${HEADINGS}\n${`${ROW}\n`.repeat(20_000)}`,
      "This has 20001 rows; at most 20000 are brought in at once. Split the list.",
    ],
    [
      "a quotation mark that is never closed",
      `${LIST}"Mossgate, Perrin,004712,PCN R,8,\r\n${ROW}`,
      "A quotation mark opens in row 3 and is never closed. Close it or take it out, and bring the list again.",
    ],
    [
      "a cell without an end",
      `${LIST}"Mossgate, Perrin",004712,PCN R,8,"${"x".repeat(2001)}"`,
      "A cell of row 3 holds more than 2000 characters. A quotation mark may be missing there; shorten or mend it.",
    ],
    [
      "no headings",
      `${ROW}\r\n${ROW}`,
      "No line of headings is found. Put a first line above the list that names its columns, like: name, record number, tube, size, placed.",
    ],
  ])("%s", (_, file, sentence) => expect(saidOfFile(file)).toEqual([sentence]));

  it("50 MB of rows, of one cell, and of nothing", () => {
    const rows = `${ROW}\n`;
    const long = `${HEADINGS}\n${rows.repeat(Math.ceil((50 * MEGABYTE) / rows.length))}`;
    expect(saidOfFile(long)[0]).toMatch(/^This has \d+ rows; at most 20000 are brought in at once\./);
    expect(saidOfFile(`${LIST}"${"x".repeat(50 * MEGABYTE)}"`)[0]).toMatch(
      /^A cell of row 3 holds more than/,
    );
    expect(saidOfFile(Buffer.alloc(50 * MEGABYTE))).toEqual([noList("no text")]);
  });
});

describe("a list that a spreadsheet wrote in its own way is the same list", () => {
  const asRead = readSheet(Buffer.from(LIST), null);
  const utf16le = Buffer.from(LIST, "utf16le");
  const utf16be = Buffer.from(utf16le).swap16();

  it.each<[string, string | Uint8Array]>([
    ["with the mark of UTF-8", `\u{feff}${LIST}`],
    ["in UTF-16, little end first, with its mark", Buffer.concat([bytes(0xff, 0xfe), utf16le])],
    ["in UTF-16, big end first, with its mark", Buffer.concat([bytes(0xfe, 0xff), utf16be])],
    ["in UTF-16, little end first, without a mark", utf16le],
    ["in UTF-16, big end first, without a mark", utf16be],
    ["with the line ends of an old Mac", LIST.replaceAll("\r\n", "\r")],
    ["with the line ends of Unix", LIST.replaceAll("\r\n", "\n")],
  ])("%s", (_, file) => {
    const read = typeof file === "string" ? Buffer.from(file) : file;
    expect(readSheet(read, null)).toEqual(asRead);
  });

  it.each([["\t"], [";"], ["|"]])("with %j between its cells", (delimiter) => {
    const cells = ["Brackenfold, Ottoline", "004711", "PCN L", "8", "14/3/26"].join(delimiter);
    const list = `${HEADINGS.replaceAll(",", delimiter)}\r\n${cells}\r\n`;
    expect(readSheet(Buffer.from(list), null)).toEqual(asRead);
    expect(readSheet(Buffer.from(`sep=${delimiter}\r\n${list}`), null)).toEqual(asRead);
  });

  it("with its headings again in the middle, which are no patient", () => {
    const again = readSheet(Buffer.from(`${LIST}${HEADINGS}\r\n${ROW}`), null);
    expect(again.repeated).toEqual([3]);
    expect(again.rows.map(({ row }) => row)).toEqual([2, 4]);
  });
});

describe("a list that can be read two ways is asked, and nothing is brought in", () => {
  it.each([
    [
      "dates in both orders",
      `${LIST}"Mossgate, Perrin",004712,PCN R,8,3/14/26`,
      [
        'Row 3 says "3/14/26", which can be read two ways. Say which stands first in this list, the day or the month.',
      ],
    ],
    ["a number twice", `${HEADINGS},mrn\r\n${ROW},004712`, []],
  ])("%s", async (_, list, sentences) => {
    using db = testDatabase();
    const { refusals } = sheetReading(db, loadSheet(db, kept(db, list)));
    expect(refusals.map(refusalSentence)).toEqual(sentences);
  });

  it("one thing in two columns", async () => {
    using db = testDatabase();
    const columns = ["wholeName", "number", "kind", "size", "placedOn", "number"] as const;
    const list = `${HEADINGS},mrn\r\n${ROW},004712`;
    await expect(broughtIn(db, list, { columns: [...columns] })).rejects.toThrow("column-twice");
    const sheet = loadSheet(db, kept(db, list, { columns: [...columns] }));
    expect(sheetReading(db, sheet).refusals.map(refusalSentence)).toEqual([
      'Two columns are matched to "Record number". Leave one of them out, or keep it as a note.',
    ]);
    expect(written(db)).toEqual([0, 0, 0]);
  });
});

describe("a row that cannot be understood is set aside with its sentence", () => {
  it.each([
    [
      "a formula",
      ROW.replace("PCN L", "=D7"),
      '"=D7" is a formula. Save the list with values in place of formulas.',
    ],
    [
      "two sizes",
      ROW.replace(",8,", ",8/10F,"),
      '"8/10F" names two sizes. Type the size of the tube that is in.',
    ],
    [
      "a kind unknown to us",
      ROW.replace("PCN L", "widget"),
      '"widget" does not say what kind of tube it is. Type it like nephrostomy, abscess drain or jj.',
    ],
    [
      "a date in the other order",
      ROW.replace("14/3/26", "3/14/26"),
      '"3/14/26" cannot be read with the day first, as the rest of the list is. Type the month in letters.',
    ],
    [
      "a spreadsheet's complaint",
      ROW.replace(",8,", ",#VALUE!,"),
      'The spreadsheet itself shows "#VALUE!" here. Type what should stand there.',
    ],
  ])("%s", async (_, row, sentence) => {
    const said = await saidOfRow(`${HEADINGS}\r\n${row}`);
    expect(said).toHaveLength(1);
    expect(said[0]).toContain(sentence);
  });
});
