import { describe, expect, it } from "vitest";
import { chosenIn, columnRefusals, columnsOf, noAnswers } from "./columns.ts";

const codes = (headings: readonly string[]) =>
  columnRefusals(columnsOf(headings, null)).map(({ code, args }) => [code, args]);

describe("the columns of a hospital's list", () => {
  it("are known by their headings, each field once, and by what was answered before them", () => {
    const headings = ["MRN", "Surname", "DOB", "Appointment date", "Start", "Location", "Exam", "Price"];
    expect(columnsOf(headings, null)).toEqual([
      "number",
      "familyName",
      "birthOn",
      "on",
      "at",
      "where",
      "what",
      "left out",
    ]);
    expect(columnsOf(["MRN", "Number"], null)).toEqual(["number", "left out"]);
    expect(columnsOf(["MRN", "Slot"], ["left out", "on"])).toEqual(["left out", "on"]);
    expect(columnsOf(["MRN", "Slot"], ["number"])).toEqual(["number", "left out"]);
  });

  it("say whose a row is, and when", () => {
    expect(codes(["MRN", "Date"])).toEqual([]);
    expect(codes(["Surname", "DOB", "Date"])).toEqual([]);
    expect(codes(["Patient", "DOB", "Date"])).toEqual([]);
    const whose = ["column-missing", { what: "the record number, or the name and the birth date" }];
    expect(codes(["Surname", "Date"])).toEqual([whose]);
    expect(codes(["DOB", "Time"])).toEqual([whose, ["column-missing", { what: "the day of the booking" }]]);
    expect(columnRefusals(["number", "on", "on"])).toMatchObject([
      { code: "column-twice", field: "columns", args: { field: "Date" } },
    ]);
  });
});

describe("a choice", () => {
  it.each([
    ["1:exchange", { numbers: [1], act: "exchange" }],
    ["1+2:check", { numbers: [1, 2], act: "check" }],
    ["one:exchange", null],
    ["1:reposition", null],
  ])("%j", (word, chosen) => {
    expect(chosenIn({ ...noAnswers, choices: { 4: word } }, 4)).toEqual(chosen);
    expect(chosenIn({ ...noAnswers, choices: { 4: word } }, 5)).toBeNull();
  });
});
