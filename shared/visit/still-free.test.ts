import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { minute } from "#tests/factories/visit.ts";
import { stillFree } from "./still-free.ts";

const gap = (from: string, to: string) => ({ from: minute(from), to: minute(to) });
const at = (on: string, clock: string) => ({ now: { on: day(on), at: minute(clock) } });
const on = day("2026-11-11");

describe("what of a day's gaps can still be booked", () => {
  it.each([
    ["all of a day to come", "2026-11-10", "15:00", [gap("08:00", "09:30")], [gap("08:00", "09:30")]],
    ["nothing of a past day", "2026-11-12", "07:00", [gap("08:00", "09:30")], []],
    ["of today from now on", "2026-11-11", "09:00", [gap("08:00", "09:30")], [gap("09:00", "09:30")]],
    ["from the next five minutes", "2026-11-11", "09:01", [gap("08:00", "09:30")], [gap("09:05", "09:30")]],
    ["up to the last of them", "2026-11-11", "09:25", [gap("08:00", "09:30")], [gap("09:25", "09:30")]],
    ["none without one of them", "2026-11-11", "09:26", [gap("08:00", "09:30")], []],
    ["none where it begins too late", "2026-11-10", "09:00", [gap("09:22", "09:24")], []],
    [
      "each on its own",
      "2026-11-11",
      "08:50",
      [gap("08:00", "08:40"), gap("08:45", "09:00"), gap("10:02", "11:00")],
      [gap("08:50", "09:00"), gap("10:05", "11:00")],
    ],
  ] as const)("%s", (_name, today, clock, gaps, left) => {
    expect(stillFree(gaps, on, at(today, clock))).toEqual(left);
  });
});
