import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { numberSought, readSought } from "./finder.ts";
import { searchText } from "./patient/search-text.ts";

const TODAY = day("2026-11-06");

const ottoline = {
  ...{ familyName: "Brackenfold-Marrowby", givenName: "Zoë Ottoline", bornOn: day("1951-04-03") },
  ...{ numbers: ["000417", "QC 12/9"], telephones: ["01632 960117", "+44 1632 960 942"] },
};

/** By the meaning of `Sought`, without a database. */
const isMeant = (typed: string, patient = ottoline): boolean =>
  readSought(typed, TODAY).some(
    ({ words, births }) =>
      words.every((word) => searchText(patient).includes(word)) &&
      (births.length === 0 || births.includes(patient.bornOn)),
  );

describe("whoever is meant is found by", () => {
  it.each([
    ["the family name", "Brackenfold-Marrowby"],
    ["a part of it", "marrow"],
    ["both names in either order", "ottoline brack"],
    ["both names as lists write them", "Brackenfold, Ottoline"],
    ["parts with and without accents", "zoe ZOË bracken"],
    ["a double name without its hyphen", "brackenfoldmarrowby"],
    ["a double name with a blank in its place", "brackenfold marrowby"],
    ["the record number as it is written", "000417"],
    ["the record number without leading zeros", "417"],
    ["the record number with more of them", "0000000417"],
    ["a number with letters, however it is parted", "qc-129"],
    ["the telephone as written", "01632 960117"],
    ["the telephone in one", "01632960117"],
    ["the telephone with dashes and brackets", "(01632) 960-117"],
    ["the last digits of a telephone", "0117"],
    ["the telephone with the code of its country", "+44 1632 960117"],
    ["the same with 00 and the zero in brackets", "0044 (0)1632 960117"],
    ["a telephone written here with that code, typed without", "01632 960942"],
    ["a birth date in letters", "3 apr 1951"],
    ["a birth date in letters, the month first", "April 3, 1951"],
    ["a birth date with its weekday", "Tue 3 Apr 1951"],
    ["a birth date with two digits of its year", "3 apr 51"],
    ["a birth date as computers write it", "1951-04-03"],
    ["a birth date with the day first", "3/4/1951"],
    ["a birth date with the month first", "04/03/1951"],
    ["a birth date with points", "03.04.1951"],
    ["a birth date with dashes and a short year", "3-4-51"],
    ["a name beside a birth date", "brack 3 apr 1951"],
    ["a birth date beside a name", "3/4/1951 ottoline"],
    ["a name beside a number", "ottoline 000417"],
  ])("%s: %j", (_, typed) => expect(isMeant(typed)).toBe(true));
});

describe("somebody else is not found by", () => {
  it.each([
    ["another name beside a right one", "ottoline thistlewick"],
    ["another birth date", "4 apr 1951"],
    ["a name beside another birth date", "brack 5 apr 1951"],
    ["a date without a year", "3 apr"],
    ["the year of birth alone", "1951"],
    ["the month of birth alone", "apr 1951"],
    ["digits that no number holds in a row", "417 960"],
    ["another number", "+44 1632 960118"],
    ["signs alone", "% _ --"],
    ["nothing", "  "],
  ])("%s: %j", (_, typed) => expect(isMeant(typed)).toBe(false));
});

describe("a date that can be read two ways", () => {
  const births = (typed: string) => readSought(typed, TODAY).flatMap((sought) => sought.births);
  it.each([
    ["3/4/1951", ["1951-04-03", "1951-03-04"]],
    ["4/4/1951", ["1951-04-04"]],
    ["13/4/1951", ["1951-04-13"]],
    ["4/13/1951", ["1951-04-13"]],
    ["3/4/12", ["1912-04-03", "1912-03-04", "2012-04-03", "2012-03-04"]],
    ["29/2/1951", []],
    ["3/4/2031", []],
    ["1951/4/3", ["1951-04-03"]],
    ["-1951", []],
    ["today", []],
  ])("%j means %j", (typed, days) => expect(births(typed)).toEqual(days));
});

describe("a record number typed alone", () => {
  it.each([
    ["00417", "417"],
    ["00 417", "417"],
    ["qc 12", null],
    ["qc12", "qc12"],
    ["brack", null],
    ["", null],
  ])("%j is %j", (typed, number) => expect(numberSought(readSought(typed, TODAY))).toBe(number));
});

it("reads a long text in a moment, with few ways to read it", () => {
  const text = "3 apr 1951 ".repeat(50);
  expect(readSought(text, TODAY).length).toBeLessThan(60);
});
