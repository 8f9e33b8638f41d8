import { describe, expect, it } from "vitest";
import { netDayOf, netDaySeries } from "#tests/factories/net-day.ts";
import { countableDays } from "./countable-days.ts";

describe("the days that a trend rests on", () => {
  it("are complete ones, numbered by the calendar from the first of them", () => {
    const { used, leftOut, until } = countableDays(netDaySeries([null, 40, null, 35, 30, null]));
    expect(used).toEqual([
      { day: "2026-11-02", index: 0, mlPer24h: 40 },
      { day: "2026-11-04", index: 2, mlPer24h: 35 },
      { day: "2026-11-05", index: 3, mlPer24h: 30 },
    ]);
    expect(leftOut.map(({ day }) => day)).toEqual(["2026-11-01", "2026-11-03", "2026-11-06"]);
    expect(leftOut[0]?.because).toEqual(["no-reading"]);
    expect(until).toBe("2026-11-06");
  });

  it.each(["flush-does-not-come-back", "leak-round-tube", "estimated"] as const)(
    "are none with the remark %s, which voids a low figure",
    (remark) => {
      const days = [netDayOf("2026-11-01", 4, { remarks: ["reported", remark] })];
      expect(countableDays(days)).toMatchObject({ used: [], leftOut: [{ because: [remark] }] });
    },
  );

  it.each(["reported", "already-net", "other-fluid-went-in"] as const)("may have the remark %s", (remark) => {
    expect(countableDays([netDayOf("2026-11-01", 4, { remarks: [remark] })]).used).toHaveLength(1);
  });

  it("are those of the last segment; its incomplete days are told, earlier ones as earlier", () => {
    const days = [
      netDayOf("2026-11-01", 40),
      netDayOf("2026-11-02", 20, { segment: 1, complete: false, because: ["gap", "day-in-progress"] }),
    ];
    expect(countableDays(days)).toEqual({
      used: [],
      leftOut: [
        { day: "2026-11-01", because: ["earlier-segment"] },
        { day: "2026-11-02", because: ["gap", "day-in-progress"] },
      ],
      until: "2026-11-02",
    });
  });

  it("come in order of time however they are given, and alike to the microlitre are alike", () => {
    const third = netDayOf("2026-11-02", 1);
    const net = { kind: "known", ul: 1, mlPer24h: 16.00049999 } as unknown as typeof third.net;
    const { used } = countableDays([{ ...third, net }, netDayOf("2026-11-01", 16)]);
    expect(used.map(({ mlPer24h }) => mlPer24h)).toEqual([16, 16]);
  });

  it("are none of no days", () => {
    expect(countableDays([])).toEqual({ used: [], leftOut: [], until: null });
  });
});
