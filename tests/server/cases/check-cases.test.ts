import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { clinicBooks, shippedBooks } from "#server/cases/case-books.ts";
import { type Checked, checkCases } from "#server/cases/check-cases.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { testDatabase } from "#tests/support/database.ts";
import { testFolder } from "#tests/support/folder.ts";
import { refusalsOf } from "#tests/support/refusal.ts";

const eightF = (expected: string) => ({
  name: "8 F",
  note: "8 / 3 = 2.67",
  compute: "length",
  given: { thing: "tube outside", typed: "8 f" },
  expect: { F: expected },
});

function check(cases: readonly object[], used = shippedBooks): Checked {
  using folder = testFolder();
  writeFileSync(folder.in("own.json"), JSON.stringify(cases));
  return checkCases({ file: folder.in("own.json"), report: null, used });
}

describe("a file of cases", () => {
  it("that agree ends with 0; the report says EXAMPLE and holds what came out", () => {
    using folder = testFolder();
    const report = folder.in("report.json");
    const { table, exit } = checkCases({ file: "docs/worked-cases.json", report, used: shippedBooks });
    expect(table).toContain("Protocol version 1 (EXAMPLE, approved by nobody) and calendar version 1");
    expect(table).toMatch(/\n(\d+) cases: \1 agree, 0 differ, 0 cannot run\.$/);
    expect(exit).toBe(0);
    const written = JSON.parse(readFileSync(report, "utf8"));
    expect(written).toMatchObject({
      protocol: { version: 1, status: "EXAMPLE", approved: null },
      calendar: { version: 1 },
      differ: 0,
      cannotRun: 0,
    });
    expect(written.cases[0]).toMatchObject({ outcome: "agrees", got: { F: "8 F" } });
  });

  it("with a wrong one shows what was expected and what came out, and ends with 1", () => {
    const { table, exit } = check([eightF("8 F"), { ...eightF("9 F"), name: "wrong" }]);
    expect(exit).toBe(1);
    expect(table).toMatch(/DIFFERS +length +wrong\n +F: expected "9 F", came out "8 F"\n/);
    expect(table).toContain("2 cases: 1 agree, 1 differ, 0 cannot run.");
  });

  it("says what a form refused where nobody expected that", () => {
    const { table, exit } = check([{ ...eightF("8 F"), given: { thing: "tube outside", typed: "8" } }]);
    expect(exit).toBe(1);
    expect(table).toContain('refused: "8" needs a unit');
  });

  it("with one that cannot be run says why, and ends with 2", () => {
    const entries = [{ form: "placed", typed: { kind: "pcn l", size: "8 f", sise: "8 f" } }];
    const given = { zone: "Europe/London", start: "2026-08-14", today: "+1", entries };
    const slip = { ...eightF("8 F"), name: "slip", compute: "tube-state", given };
    const { table, exit } = check([eightF("8 F"), slip]);
    expect(exit).toBe(2);
    expect(table).toMatch(/CANNOT RUN +tube-state +slip\n +Entry 1, the form "placed", has no field "sise"/);
  });

  it("is run with the tables of a clinic's database, and says so", () => {
    using db = testDatabase();
    const { table } = check([eightF("8 F")], clinicBooks(db));
    expect(table).toContain("calendar version 1, of the clinic's database.");
  });

  it.each([
    ["that is not there", "docs/none.json", null, "There is no file to read at"],
    ["that is no JSON", "README.md", null, "The file is no JSON."],
    ["without cases", "package.json", null, "The file holds no list of cases."],
    [
      "whose report cannot be written",
      "docs/worked-cases.json",
      "none/x.json",
      "The report cannot be written",
    ],
  ])("%s is told what to mend", (_, file, report, sentence) => {
    const refusals = refusalsOf(() => checkCases({ file, report, used: shippedBooks }));
    expect(refusals.map(refusalSentence).join(" ")).toContain(sentence);
  });
});
