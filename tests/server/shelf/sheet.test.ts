import { describe, expect, it } from "vitest";
import type { Database } from "#db/sqlite.ts";
import { csvLines } from "#server/export/csv/csv-table.ts";
import { shelfTable } from "#server/export/csv/shelf-table.ts";
import { newId } from "#server/ids.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { addToShelf } from "#server/shelf/add-to-shelf.ts";
import { bringToShelf } from "#server/shelf/bring-to-shelf.ts";
import { previewShelfSheet } from "#server/shelf/preview-shelf-sheet.ts";
import { shelfOf } from "#server/shelf/shelf-of.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { refusalsOf } from "#tests/support/refusal.ts";

const doing = (db: Database) => ({ db, staff: people.nurse });
const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
const sheet = (text: string) => ({ bytes: bytesOf(text), encoding: null });

const bring = (db: Database, text: string, changes = false) =>
  bringToShelf(doing(db), { ...sheet(text), actId: newId(), changes });
const stands = (db: Database, text: string) =>
  previewShelfSheet(db, sheet(text)).rows.map((row) => row.stands);

const list = [
  "Our shelf;;;",
  "Name;Sort;Size;Length;Price",
  "Standard 0.035;wire;.035 in;145;12",
  "Drain 8;tube;8,5 F;25;30",
  "Odd one;tube;80 F;25;30",
].join("\n");

const bare = (types: readonly ShelfType[]) => types.map(({ id: _id, ...type }) => type);

describe("a sheet of types", () => {
  it("is shown row by row before it is brought in, with the headings that nothing is read from", () => {
    using db = testDatabase();
    const { rows, leftOut } = previewShelfSheet(db, sheet(list));
    expect(leftOut).toEqual(["Price"]);
    expect(rows).toMatchObject([
      { row: 3, stands: "new", words: { name: "Standard 0.035", outside: "0.035 in", length: "145 cm" } },
      { row: 4, stands: "new", words: { name: "Drain 8", outside: "8.5 F", takes: "unknown" } },
      {
        row: 5,
        stands: "set aside",
        reasons: [
          {
            label: "Size",
            sentence: "80 F is outside what is made (3 to 40 F). Check the number and the unit.",
          },
        ],
      },
    ]);
    expect(shelfOf(db)).toEqual([]);
  });

  it("comes onto the shelf in one act, which is taken back as one", () => {
    using db = testDatabase();
    const { actId, ...brought } = bring(db, list);
    expect(brought).toEqual({ added: 2, changed: 0, setAside: 1 });
    expect(shelfOf(db).map(({ name }) => name)).toEqual(["Drain 8", "Standard 0.035"]);
    expect(undoAct({ db, staff: people.nurse }, { actId: newId(), undoes: actId })).toEqual({ undone: 2 });
    expect(shelfOf(db)).toEqual([]);
  });

  it("brought twice changes nothing", () => {
    using db = testDatabase();
    bring(db, list);
    const before = shelfOf(db);
    expect(stands(db, list)).toEqual(["here already", "here already", "set aside"]);
    expect(refusalsOf(() => bring(db, list, true))).toEqual([{ code: "nothing-for-shelf" }]);
    expect(shelfOf(db)).toEqual(before);
  });

  it("sent twice in one act is brought in once", () => {
    using db = testDatabase();
    const input = { ...sheet(list), actId: newId(), changes: false };
    expect(bringToShelf(doing(db), input)).toEqual(bringToShelf(doing(db), input));
    expect(refusalsOf(() => bringToShelf(doing(db), { ...input, changes: true }))).toEqual([
      { code: "act-already-used" },
    ]);
  });

  it("changes a type that is there already only where the person says so, and says what", () => {
    using db = testDatabase();
    bring(db, list);
    const longer = list.replace("145", "180").replace("Odd one;tube;80 F", "Odd one;tube;10 F");
    expect(previewShelfSheet(db, sheet(longer)).rows[0]).toMatchObject({
      stands: "changes",
      differences: [{ label: "Length, cm", was: "145 cm", now: "180 cm" }],
    });
    expect(bring(db, longer)).toMatchObject({ added: 1, changed: 0 });
    expect(stands(db, longer)).toEqual(["changes", "here already", "here already"]);
    expect(bring(db, longer, true)).toMatchObject({ added: 0, changed: 1 });
    expect(stands(db, longer)).toEqual(["here already", "here already", "here already"]);
  });

  it.each([
    ["commas", ","],
    ["tabs", "\t"],
  ])("is read with %s", (_, mark) => {
    using db = testDatabase();
    const rows = [
      ["Item", "Type", "French"],
      ["Dilator 9", "dilator", "9"],
    ];
    const text = rows.map((cells) => cells.join(mark)).join("\r\n");
    bring(db, text);
    expect(shelfOf(db)).toMatchObject([{ name: "Dilator 9", sort: "dilator" }]);
  });

  it.each([
    ["", "sheet-empty"],
    ["Name;Sort", "sheet-empty"],
    ["one;two\n1;2", "headings-missing"],
    ["Name;Size\nIt;8 F", "shelf-column-missing"],
    ["Name;Sort;Size;OD\nIt;tube;8 F;8 F", "shelf-column-twice"],
    ['Name;Sort\n"It;tube', "quote-not-closed"],
    ["PK\u0003\u0004", "sheet-not-text"],
  ])("%j is refused as %s", (text, code) => {
    using db = testDatabase();
    expect(refusalsOf(() => bring(db, text)).map((refusal) => refusal.code)).toEqual([code]);
  });
});

describe("shelf.csv", () => {
  const texts: readonly Texts[] = [
    { sort: "wire", name: '=Stiff, "0.035"', outside: ".035 in", length: "180", tolerance: "0.0005 in" },
    { sort: "needle", name: "Entry", outside: "21 g", takes: ".018 in", length: "15" },
    {
      sort: "sheath",
      name: "Sheath 9",
      outside: "~11 f",
      takesDevice: "9 f",
      bores: "shaft 3.1 mm, valve ?",
    },
    {
      sort: "tube",
      name: "Drain 10",
      outside: "10.2 f",
      takes: ".038 in",
      bores: "hub 2 mm +- 0.05 mm, end hole .041 in",
      endHole: "open",
      length: "25",
      retention: "pigtail",
      kinds: "abscess drain, pcn",
      certainty: "reported",
    },
    { sort: "stiffener", name: "Stiffener", outside: "?" },
  ];

  it("is brought in again as it was, into an empty clinic and into its own", () => {
    using db = testDatabase();
    for (const each of texts) addToShelf(doing(db), { actId: newId(), texts: each });
    const written = [...csvLines(shelfTable, db)].join("");
    expect(stands(db, written)).toEqual(texts.map(() => "here already"));
    using other = testDatabase();
    expect(bring(other, written)).toMatchObject({ added: texts.length, setAside: 0 });
    expect(bare(shelfOf(other))).toEqual(bare(shelfOf(db)));
    expect([...csvLines(shelfTable, other)].join("")).toBe(written);
  });
});
