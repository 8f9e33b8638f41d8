import { expect, it } from "vitest";
import { millilitres } from "#shared/output/microlitre.ts";
import { emptiedOn, flushOf, seenIn } from "#shared/review/emptied-on.ts";
import { at, flush, reading } from "#tests/factories/reading.ts";

const day = { from: at("2026-11-03T05:00Z"), to: at("2026-11-04T05:00Z") };

it("a reading belongs to the day on which it was emptied, its end at midnight to the day before", () => {
  const ending = (to: string) => reading({ id: to, from: "since last emptying", to: at(to) });
  const all = ["2026-11-03T05:00Z", "2026-11-03T05:01Z", "2026-11-04T05:00Z", "2026-11-04T05:01Z"].map(
    ending,
  );
  expect(emptiedOn(day, all).map(({ id }) => id)).toEqual(["2026-11-03T05:01Z", "2026-11-04T05:00Z"]);
});

it.each([
  ["nothing emptied", [], null],
  ["no flush given", ["none"], "none"],
  ["10 and 10", [flush(10), flush(10)], { ul: millilitres(20), estimated: false }],
  ["10 and none", [flush(10), "none"], { ul: millilitres(10), estimated: false }],
  ["one that nobody wrote down", [flush(10), "not recorded"], "not recorded"],
  [
    "about 5 and 10",
    [{ ul: millilitres(5), estimated: true }, flush(10)],
    { ul: millilitres(15), estimated: true },
  ],
] as const)("the flush of a day: %s", (_name, given, said) => {
  expect(flushOf(given.map((flushGiven) => reading({ flushGiven })))).toEqual(said);
});

it("what was seen is told once each", () => {
  const all = [reading({ characters: ["serous", "debris"] }), reading({ characters: ["serous"] })];
  expect(seenIn(all).toSorted()).toEqual(["debris", "serous"]);
});
