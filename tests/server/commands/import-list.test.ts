import { copyFileSync, existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { backUp } from "#db/backup.ts";
import { openDatabase } from "#db/connection.ts";
import { events } from "#db/schema/events.ts";
import { tubes } from "#db/schema/projections.ts";
import { sheets } from "#db/schema/sheets.ts";
import { type BringingList, bringList } from "#server/commands/bring-list.ts";
import { type ColumnOption, importOptions, type ListOptions } from "#server/commands/list-options.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { testFolder } from "#tests/support/folder.ts";
import { runCommand } from "#tests/support/run-command.ts";

const LIST = [
  "name,mrn,tube,French,placed",
  '"Brackenfold, Ottoline",004711,PCN L,8,3/4/26',
  '"Mossgate, Perrin",004712,perc chole,8/10,',
  '"Larkspindle, Edwin",004713,JJ R,6,14/3/26',
].join("\r\n");

type Folder = ReturnType<typeof testFolder>;

async function clinicWith(folder: Folder, list = LIST): Promise<Record<string, string>> {
  using db = testDatabase();
  await backUp(db, folder.in("clinic.sqlite"));
  writeFileSync(folder.in("list.csv"), list);
  return { DATABASE_FILE: "clinic.sqlite", INIT_CWD: folder.path };
}

const rowsIn = (folder: Folder) => {
  const db = openDatabase(folder.in("clinic.sqlite"));
  try {
    const count = (table: typeof events | typeof tubes | typeof sheets): number =>
      db.orm.select().from(table).all().length;
    return { tubes: count(tubes), events: count(events), sheets: count(sheets) };
  } finally {
    db.sqlite.close();
  }
};

const none = { tubes: 0, events: 0, sheets: 0 };
const bringing = (folder: Folder, options: Partial<ListOptions>): BringingList => ({
  database: folder.in("clinic.sqlite"),
  file: folder.in("list.csv"),
  options: { ...importOptions(["list.csv", "--by", people.nurse.userName]), ...options },
});

const by = ["--by", people.nurse.userName];

describe("npm run import with a clinic's own list", { timeout: 120_000 }, () => {
  it("shows how each row would stand and writes nothing, until it is told to", async () => {
    using folder = testFolder();
    const env = await clinicWith(folder);
    const shown = [
      "Columns:",
      "  name: Whole name",
      "  mrn: Record number",
      "  tube: Kind",
      "  French: Size",
      "  placed: Placed on",
      "3 rows:",
      "  2 tubes of 2 patients to bring in",
      "  0 rows brought in before",
      "  0 rows said above",
      "  1 row set aside",
      '  Row 3: French: "8/10" names two sizes. Type the size of the tube that is in.',
    ];
    expect(await runCommand("import", env, "list.csv", ...by)).toEqual({
      code: 1,
      stdout: `${[...shown, "Nothing is written. Bring in 2 tubes with --yes"].join("\n")}\n`,
      stderr: "",
    });
    expect(rowsIn(folder)).toEqual(none);
    expect(readdirSync(folder.path).toSorted()).toEqual(["clinic.sqlite", "list.csv"]);

    const aside = folder.in("list.set-aside.csv");
    expect(await runCommand("import", env, "list.csv", ...by, "--yes")).toEqual({
      code: 0,
      stdout: `${[
        ...shown,
        "2 tubes of 2 patients brought in.",
        `The rows set aside, each with its reason: ${aside}`,
      ].join("\n")}\n`,
      stderr: "",
    });
    expect(rowsIn(folder)).toEqual({ tubes: 2, events: 2, sheets: 0 });
    expect(statSync(aside).mode & 0o777).toBe(0o600);
    expect(readFileSync(aside, "utf8").split("\r\n")[1]).toMatch(
      /^"Mossgate, Perrin",004712,perc chole,8\/10,,3,/,
    );
  });

  it("brought in again changes nothing; a file of rows set aside is not written over", async () => {
    using folder = testFolder();
    const env = await clinicWith(folder);
    await runCommand("import", env, "list.csv", ...by, "--yes");
    const before = rowsIn(folder);
    const again = await runCommand("import", env, "list.csv", ...by, "--yes");
    expect(again).toMatchObject({ code: 1, stderr: "" });
    expect(again.stdout).toContain("  2 rows brought in before\n");
    expect(again.stdout).toContain("There is nothing to bring in.\n");
    const more = `${LIST}\r\n"Vetchmere, Odelia",004714,PEG,20,14/5/26`;
    writeFileSync(folder.in("list.csv"), more);
    const refused = await runCommand("import", env, "list.csv", ...by, "--yes");
    expect(refused.code).toBe(1);
    expect(refused.stderr).toBe(
      `There is already a file at ${folder.in("list.set-aside.csv")}. Choose another name.\n`,
    );
    expect(rowsIn(folder)).toEqual(before);
    writeFileSync(folder.in("list.csv"), LIST.replace("8/10", "8"));
    const mended = await runCommand("import", env, "list.csv", ...by, "--yes");
    expect(mended).toMatchObject({ code: 0, stderr: "" });
    expect(rowsIn(folder).tubes).toBe(3);
    expect((await runCommand("import", env, "list.csv", ...by)).code).toBe(0);
  });

  it("asks what a list leaves open, each with its flag, and takes the answers", async () => {
    using folder = testFolder();
    const env = await clinicWith(
      folder,
      "who;hospital id;tube;French;placed\nBrackenfold Ottoline;004711;PCN L;8;3/4/26\n",
    );
    const asked = await runCommand("import", env, "list.csv", ...by);
    expect(asked.code).toBe(1);
    expect(asked.stderr.trim().split("\n")).toEqual([
      'No column says the record number. Choose the column that does. Answer with --column "HEADING=WHAT IT SAYS"',
      'No column says the name. Choose the column that does. Answer with --column "HEADING=WHAT IT SAYS"',
      'Row 2 says "3/4/26", which can be read two ways. Say which stands first in this list, the day or the month. Answer with --dates day-first or --dates month-first',
    ]);
    const columns = ["--column", "who=Whole name", "--column", "Hospital ID=record number"];
    const named = await runCommand("import", env, "list.csv", ...by, ...columns, "--dates", "month-first");
    expect(named.stderr).toContain("Answer with --names family-first or --names given-first\n");
    const answers = [
      ...columns,
      "--dates",
      "month-first",
      "--names",
      "family-first",
      "--issuer",
      "Saltmarsh",
    ];
    const done = await runCommand("import", env, "list.csv", ...by, ...answers, "--yes");
    expect(done).toMatchObject({ code: 0, stderr: "" });
    const db = openDatabase(folder.in("clinic.sqlite"));
    expect(db.orm.select().from(tubes).all()).toMatchObject([
      { name: "Left nephrostomy, 8 F", clockEarliest: "2026-03-04" },
    ]);
    db.sqlite.close();
  });

  it("tells on the side how far a long list is", async () => {
    using folder = testFolder();
    const rows = Array.from(
      { length: 600 },
      (_, row) => `"Mossgate, Perrin",${100_000 + row},PEG,20,14/3/26`,
    );
    const env = await clinicWith(folder, ["name,mrn,tube,French,placed", ...rows].join("\n"));
    const { code, stderr } = await runCommand("import", env, "list.csv", ...by, "--yes");
    expect(code).toBe(0);
    // Whether the last line is said hangs on how fast the machine is.
    expect(stderr).toMatch(
      /^Read: 500 of 600 rows\nRead again: 500 of 600 rows\n(?:Writing all rows in one act; this takes about \d+ seconds\.\n)?$/,
    );
    expect(rowsIn(folder).tubes).toBe(600);
  });

  it("brings in the untidy list that comes with the program", async () => {
    using folder = testFolder();
    const env = await clinicWith(folder);
    copyFileSync("docs/untidy-list.csv", folder.in("untidy-list.csv"));
    const answers = ["--dates", "day-first", "--names", "family-first", "--yes"];
    const { code, stdout, stderr } = await runCommand("import", env, "untidy-list.csv", ...by, ...answers);
    expect(code).toBe(0);
    // Whether it is said hangs on how fast the machine is.
    expect(stderr).toMatch(/^(?:Writing all rows in one act; this takes about \d+ seconds\.\n)?$/);
    expect(stdout).toContain("125 tubes of 116 patients brought in.\n");
    expect(existsSync(folder.in("untidy-list.set-aside.csv"))).toBe(true);
  });

  it.each([
    ["nobody", null, "text-missing"],
    ["a stranger", "nobody", "user-name-unknown"],
    ["a caller", people.caller.userName, "not-allowed"],
  ])("is refused of %s", async (_, name, code) => {
    using folder = testFolder();
    await clinicWith(folder);
    await expect(bringList(bringing(folder, { by: name }))).rejects.toThrow(code);
    expect(rowsIn(folder)).toEqual(none);
  });

  it.each([
    ["a workbook named .csv", "PK\u0003\u0004...", "sheet-not-text"],
    ["an empty file", "", "sheet-empty"],
    ["an open quotation mark", 'name,mrn,tube\n"Brackenfold,1,PCN', "quote-not-closed"],
    ["a column that is not there", LIST, "column-unknown", { heading: "widget", says: "Kind" }],
    ["a column that can say no such thing", LIST, "word-unknown", { heading: "mrn", says: "shoe size" }],
  ])("%s: refused, and nothing written", async (_, list, code, column?: ColumnOption) => {
    using folder = testFolder();
    await clinicWith(folder, list);
    const columns = column === undefined ? [] : [column];
    await expect(bringList(bringing(folder, { columns }))).rejects.toThrow(code);
    expect(rowsIn(folder)).toEqual(none);
  });
});

describe("what is typed behind npm run import", () => {
  it.each([
    ["no file", [], "text-missing"],
    ["an unknown flag", ["list.csv", "--force"], "command-not-understood"],
    ["an order that is none", ["list.csv", "--dates", "year-first"], "command-not-understood"],
    ["an encoding that is none", ["list.csv", "--encoding", "runes"], "command-not-understood"],
    ["a second file", ["list.csv", "other.csv"], "command-not-understood"],
    ["half a column", ["list.csv", "--column", "Tube"], "command-not-understood"],
  ])("is refused: %s", (_, args, code) => {
    expect(() => importOptions(args)).toThrow(code);
  });

  it("is read whole", () => {
    const typed = ["/l.csv", "--by", "tansy", "--dates", "day-first", "--names", "given-first", "--yes"];
    const rest = ["--issuer", " Saltmarsh ", "--encoding", "macintosh", "--column", "a=b=Kind"];
    expect(importOptions([...typed, ...rest])).toEqual({
      file: "/l.csv",
      by: "tansy",
      dateOrder: "day first",
      nameOrder: "given name first",
      issuer: "Saltmarsh",
      encoding: "macintosh",
      columns: [{ heading: "a=b", says: "Kind" }],
      yes: true,
    });
  });
});
