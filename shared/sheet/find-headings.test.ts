import { describe, expect, it } from "vitest";
import { suggestColumns } from "#shared/sheet/answers.ts";
import { findHeadings } from "#shared/sheet/find-headings.ts";
import { MOST_COLUMNS, MOST_IN_CELL } from "#shared/sheet/sheet.ts";
import { isHeading } from "#shared/sheet/sheet-fields.ts";

const lines = (...texts: readonly string[]) =>
  texts.map((text, index) => ({ row: index + 1, cells: text.split(",") }));

const found = (...texts: readonly string[]) => {
  const result = findHeadings(lines(...texts), isHeading);
  return result.ok ? result.value : result.refusal.code;
};

describe("finding the line of headings", () => {
  it("passes a title, blank lines, and headings that a printed list repeats", () => {
    expect(
      found("Drain list May,,", ",,", "Name,MRN,Tube", "a,1,pcn", "name,mrn,tube", ",,", "b,2,jj"),
    ).toEqual({
      headings: ["Name", "MRN", "Tube"],
      rows: [
        { row: 4, cells: ["a", "1", "pcn"] },
        { row: 7, cells: ["b", "2", "jj"] },
      ],
      repeated: [5],
    });
  });

  it("gives a place of its own to a cell beyond the headings, and fills a short row", () => {
    expect(found("name,mrn", "a,1,extra", "b")).toMatchObject({
      headings: ["name", "mrn", "column 3"],
      rows: [{ cells: ["a", "1", "extra"] }, { cells: ["b", "", ""] }],
    });
  });

  it.each([
    ["nothing at all", [], "sheet-empty"],
    ["blank lines", [",,", " , "], "sheet-empty"],
    ["headings alone", ["name,mrn,tube"], "sheet-empty"],
    ["patients without headings", ["Testwell,004,pcn", "Otherby,005,jj"], "headings-missing"],
    ["too many columns", ["name,mrn", `a,${",x".repeat(MOST_COLUMNS)}`], "sheet-too-wide"],
    ["a cell as long as a letter", ["name,mrn", `a,${"x".repeat(MOST_IN_CELL + 1)}`], "cell-too-long"],
  ] as const)("refuses %s", (_, texts, code) => expect(found(...texts)).toBe(code));
});

describe("suggesting what each column says", () => {
  const suggest = (headings: string[], remembered = new Map()) => suggestColumns({ headings }, remembered);

  it("knows headings by their words, in any case, with signs and brackets", () => {
    expect(
      suggest(["Surname", "First name", "DOB", "MRN:", "Tube type", "Size (Fr)", "Date placed (dd/mm/yy)"]),
    ).toEqual(["familyName", "givenName", "birthOn", "number", "kind", "size", "placedOn"]);
  });

  it("suggests a field once, and leaves out what it does not know", () => {
    expect(
      suggest(["Date placed", "date  placed", "shoe size of the porter's cat", "notes", "comments"]),
    ).toEqual(["placedOn", "left out", "left out", "note", "note"]);
  });

  it("remembers what a heading was matched to before, leaving out included", () => {
    const remembered = new Map([
      ["stuff", "kind"],
      ["notes", "left out"],
    ]);
    expect(suggest(["Stuff", "Notes"], remembered)).toEqual(["kind", "left out"]);
  });
});
