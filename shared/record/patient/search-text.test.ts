import { describe, expect, it } from "vitest";
import { searchLetters, searchText, searchWord } from "./search-text.ts";

describe("letters as the finder compares them", () => {
  it.each([
    ["Ottoline", "ottoline"],
    ["Zoë Brontë", "zoe bronte"],
    ["Bjørn Łukasz", "bjorn lukasz"],
    ["Großmann", "grossmann"],
    ["Ægir", "aegir"],
    ["Nguyễn", "nguyen"],
    ["İpek", "ipek"],
    ["Анна", "анна"],
  ])("%j is %j", (text, plain) => expect(searchLetters(text)).toBe(plain));
});

describe("a word as the finder compares it", () => {
  it.each([
    ["000417", "417"],
    ["0", "0"],
    ["000", "0"],
    ["MRN-00 417", "mrn00417"],
    ["A/17.4", "a174"],
    ["O'Brien", "obrien"],
    ["O’Brien", "obrien"],
    ["Quill-Marrow", "quillmarrow"],
    ["%_", ""],
  ])("%j is %j", (text, plain) => expect(searchWord(text)).toBe(plain));
});

describe("what the finder compares of a patient", () => {
  const named = { familyName: "van Quill-Marrow", givenName: "Zoë Ann", numbers: [], telephones: [] };

  it("has every word between blanks: names, numbers, telephones marked as such", () => {
    expect(
      searchText({ ...named, numbers: ["000417", "X-77"], telephones: ["+44 (0)1632 960-117", "555 0117"] }),
    ).toBe(" van quillmarrow zoe ann 417 x77 t4401632960117 t5550117 ");
  });

  it("leaves out what has no letter and no digit", () => {
    expect(searchText({ ...named, givenName: "-", numbers: ["--"], telephones: ["none", ""] })).toBe(
      " van quillmarrow ",
    );
  });
});
