import { describe, expect, it } from "vitest";
import type { Weekday } from "#shared/day/day.ts";
import { printWeekdays, readWeekdays } from "#shared/day/weekdays.ts";

describe("days of the week as people type them", () => {
  it.each([
    ["mon-fri", [1, 2, 3, 4, 5]],
    ["Mon - Fri", [1, 2, 3, 4, 5]],
    ["mon–fri", [1, 2, 3, 4, 5]],
    ["monday to friday", [1, 2, 3, 4, 5]],
    ["mon wed fri", [1, 3, 5]],
    ["Fri, Mon and Wed", [1, 3, 5]],
    ["mo tu we th", [1, 2, 3, 4]],
    ["tue to thu, sat", [2, 3, 4, 6]],
    ["fri-mon", [1, 5, 6, 7]],
    ["mon mon-tue", [1, 2]],
    ["every day", [1, 2, 3, 4, 5, 6, 7]],
    ["sunday", [7]],
  ])('"%s" is read', (typed, days) => {
    expect(readWeekdays(typed)).toEqual({ ok: true, value: days });
  });

  it.each(["", "  ", "none"])('"%s" is no open weekday at all', (typed) => {
    expect(readWeekdays(typed)).toEqual({ ok: false, refusal: { code: "weekdays-none" } });
  });

  it.each(["t", "s", "mon-", "-fri", "mon-wed-fri", "weekdays", "mon tues-", "1-5"])(
    '"%s" is asked again',
    (typed) => {
      expect(readWeekdays(typed)).toEqual({
        ok: false,
        refusal: { code: "weekdays-not-understood", args: { text: typed } },
      });
    },
  );

  it("what is printed is read back, for each of the 127 weeks that there are", () => {
    for (let mask = 1; mask < 128; mask += 1) {
      const days = ([1, 2, 3, 4, 5, 6, 7] as const).filter((of) => (mask >> (of - 1)) & 1);
      expect(readWeekdays(printWeekdays(days))).toEqual({ ok: true, value: days });
    }
  });

  it("three or more in a row are a span, two are named", () => {
    const printed = (...days: Weekday[]) => printWeekdays(days);
    expect(printed(1, 2, 3, 4, 5)).toBe("Monday to Friday");
    expect(printed(6, 7)).toBe("Saturday, Sunday");
    expect(printed(5, 3, 1)).toBe("Monday, Wednesday, Friday");
    expect(printed()).toBe("no day of the week");
  });
});
