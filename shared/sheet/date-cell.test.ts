import { describe, expect, it } from "vitest";
import type { DateOrder } from "#shared/sheet/answers.ts";
import { dateCell, orderShown } from "#shared/sheet/date-cell.ts";
import type { DateField } from "#shared/sheet/sheet-fields.ts";

const read = (cell: string, order: DateOrder | null = "day first", field: DateField = "placedOn") => {
  const result = dateCell(cell, { field, order, thisYear: 2026 });
  return result.ok ? result.value : result.refusal.code;
};

describe("a date as a spreadsheet holds it", () => {
  it.each([
    ["3/4/26", "2026-04-03"],
    ["03/04/2026", "2026-04-03"],
    ["3.4.2026", "2026-04-03"],
    ["3-4-26", "2026-04-03"],
    ["14/3/26", "2026-03-14"],
    ["4/4/26", "2026-04-04"],
    ["2026-04-03", "2026-04-03"],
    ["2026/4/3", "2026-04-03"],
    ["20260403", "2026-04-03"],
    ["2026-04-03T00:00:00", "2026-04-03"],
    ["03/04/2026 00:00", "2026-04-03"],
    ["2026-04-03 14:30:00", "2026-04-03 14:30"],
    ["3-Apr-26", "3 Apr 2026"],
    ["3 apr '26", "3 apr 2026"],
    ["apr '26", "apr 2026"],
    ["3 april 2026", "3 april 2026"],
    ["3/4", "3 apr"],
    ["~3/4/26", "~2026-04-03"],
    ["approx 3/4/26", "~2026-04-03"],
    ["?march 2026", "~march 2026"],
    ["early march 2026", "~march 2026"],
    ["mid-march 2026", "~march 2026"],
    ["", ""],
    ["?", "?"],
    ["unknown", "?"],
    ["n/k", "?"],
    ["-", "?"],
  ])("day first: %j is typed as %j", (cell, typed) => expect(read(cell)).toBe(typed));

  it("with the month first, the same cell is another day", () => {
    expect(read("3/4/26", "month first")).toBe("2026-03-04");
    expect(read("3/4", "month first")).toBe("4 mar");
  });

  it.each([
    ["3/4/26", null, "day-order-unclear"],
    ["3/14/26", "day first", "date-other-order"],
    ["14/3/26", "month first", "date-other-order"],
    ["46115", "day first", "day-number"],
    ["46115.5", "day first", "day-number"],
    ["Apr-26", "day first", "month-or-day-unclear"],
  ] as const)("asks about %j with %s", (cell, order, code) => expect(read(cell, order)).toBe(code));

  it("reads what no order can change without being told one", () => {
    expect(read("14/3/26", null)).toBe("2026-03-14");
    expect(read("4/4/26", null)).toBe("2026-04-04");
  });

  // 2026 is the year of reading: 27 can only be 1927 for somebody who has been born.
  it.each([
    ["3/4/57", "1957-04-03"],
    ["3/4/27", "1927-04-03"],
    ["3/4/26", "birth-century-unclear"],
    ["3/4/19", "birth-century-unclear"],
    ["3-Apr-19", "birth-century-unclear"],
    ["3/4/2019", "2019-04-03"],
  ])("a birth on %j is %s", (cell, typed) => expect(read(cell, "day first", "birthOn")).toBe(typed));
});

describe("which order a cell shows", () => {
  it.each([
    ["14/3/26", "day first"],
    ["3/14/26", "month first"],
    ["3/4/26", "unclear"],
    ["3/4/26 00:00", "unclear"],
    ["~3/4/26", "unclear"],
    ["4/4/26", undefined],
    ["2026-03-04", undefined],
    ["31/31/26", undefined],
    ["in march", undefined],
  ])("%j: %s", (cell, shown) => expect(orderShown(cell)).toBe(shown));
});
