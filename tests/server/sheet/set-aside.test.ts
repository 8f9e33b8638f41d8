import fc from "fast-check";
import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import type { Database } from "#db/sqlite.ts";
import { loadSheet } from "#server/sheet/load-sheet.ts";
import { readSheet } from "#server/sheet/read-sheet.ts";
import { setAsideFile, setAsideOf } from "#server/sheet/set-aside.ts";
import { standSheet } from "#server/sheet/stand-sheet.ts";
import { testDatabase } from "#tests/support/database.ts";
import { kept } from "#tests/support/sheet.ts";

const headings = ["name", "mrn", "tube", "size (Fr)", "notes"];
const list = (...rows: string[]): string => [headings.join(","), ...rows].join("\r\n");

const asideOf = (db: Database, file: string): Promise<string> => setAsideOf(db, kept(db, file));
const standingsOf = (db: Database, file: string) => standSheet(db, loadSheet(db, kept(db, file)));

const cell = fc.oneof(
  fc.constantFrom(
    "=D12",
    "'=D12",
    "''=D12",
    "+44 555 0117",
    "-",
    "@SUM(1)",
    "'tis",
    'said "so"; twice',
    "a\nb",
  ),
  fc.string(),
);
const told = { row: 7, reasons: [{ heading: "tube", sentence: "=It is to be mended." }] };

/** What is said of the only row of a list. */
async function saidOf(columns: string, row: string): Promise<string> {
  using db = testDatabase();
  const file = await asideOf(db, `${columns}\r\n"Brackenfold, Ottoline",004711,${row}`);
  const [, line] = Papa.parse<string[]>(file).data;
  return line?.at(-1) ?? "";
}

describe("what is to be mended names the column of the list, or the one to add", () => {
  const someRoles = "collection, drains an organ, air and fluid, intermittent, internal, feeding, venting";

  it("a kind without a usual role and mode", async () => {
    const said = await saidOf("name,mrn,tube", "other tube");
    expect(said).toContain(
      `This kind has no usual role: choose the role. Add a column "Role" with one of: ${someRoles}, irrigation access.`,
    );
    expect(said).toContain(
      'This kind has no usual mode: choose the mode. Add a column "Mode" with one of: to bag, to bulb,',
    );
  });

  it("the same where there are such columns", async () => {
    expect(await saidOf("name,mrn,tube,role,drains to", "other tube,,to bag")).toBe(
      `role: This kind has no usual role: choose the role. Type one of: ${someRoles}, irrigation access.`,
    );
    expect(await saidOf("name,mrn,tube,role,drains to", "other tube,feeding,upwards")).toMatch(
      /^drains to: "upwards" is not one of the choices here\. Type one of: to bag, /,
    );
  });

  it("a size that stands beside the kind", async () => {
    expect(await saidOf("name,mrn,tube", "PCN L 99 Fr")).toMatch(/^tube: /);
  });

  it("a plan made from a column of dates, and two of them", async () => {
    const planned = "name,mrn,tube,next due,review";
    expect(await saidOf(planned, "PCN L,someday,")).toMatch(/^next due: /);
    expect(await saidOf(planned, "PCN L,14 jan 2027,15 jan 2027")).toBe(
      '"next due" and "review" plan two things for one tube. Keep the next one, and the other as a note.',
    );
  });

  it("the telephone of somebody without a name", async () => {
    expect(await saidOf("name,mrn,tube,carer phone", "PCN L,555 0117")).toMatch(
      /Add a column "Alternate contact"\.$/,
    );
  });
});

describe("the file of rows set aside, brought in again", () => {
  it("is the list that it came from, whatever stands in its cells", () => {
    fc.assert(
      fc.property(fc.array(cell, { minLength: 4, maxLength: 4 }), (cells) => {
        const own = ["Brackenfold, Ottoline", ...cells];
        const file = setAsideFile({ headings, rows: [{ ...told, cells: own }] });
        const read = readSheet(Buffer.from(file), null);
        expect(read).toEqual({ headings, rows: [{ row: 2, cells: own }], repeated: [] });
      }),
    );
  });

  it.each(["=D12", "'=D12"])("says of an unmended kind %s what it said before", async (kind) => {
    using db = testDatabase();
    const row = `"Brackenfold, Ottoline",004711,${kind},8,`;
    const file = await asideOf(db, list(row));
    expect((await standingsOf(db, file))[0]).toEqual((await standingsOf(db, list(row)))[0]);
    expect(await asideOf(db, file)).toBe(file);
  });

  it("still says of a formula that it is one, and guards it", async () => {
    using db = testDatabase();
    const file = await asideOf(db, list('"Brackenfold, Ottoline",004711,PCN L,8,=D12'));
    expect(file.split("\r\n")[1]).toBe(
      `"Brackenfold, Ottoline",004711,PCN L,8,"'=D12",2,"notes: ""=D12"" is a formula. Save the list with values in place of formulas."`,
    );
    expect((await standingsOf(db, file))[0]).toMatchObject({
      stands: "set aside",
      refusals: [{ field: "note", refusal: { code: "cell-formula", args: { text: "=D12" } } }],
    });
  });

  it("comes in once it is mended, with what was guarded as it was typed", async () => {
    using db = testDatabase();
    const headed = list('"Brackenfold, Ottoline",004711,=D12,8,+44 555 0117 rings');
    const file = await asideOf(db, headed);
    const [mended] = await standingsOf(db, file.replace(`"'=D12"`, "PCN L"));
    if (mended?.stands !== "comes in") throw new Error("the mended row does not come in");
    expect(mended.read.tube.payload.note).toBe("notes: +44 555 0117 rings");
  });
});
