import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { minute } from "#tests/factories/visit.ts";
import { type VisitInShort, visitInShort } from "./next-visit.ts";

const booked: VisitInShort = { state: "booked", on: day("2026-11-11"), from: minute("09:30"), where: null };

describe("a visit in a list", () => {
  it.each<readonly [Partial<VisitInShort>, string]>([
    [{}, "booked Wed 11 Nov 2026, 09:30"],
    [{ state: "proposed" }, "proposed Wed 11 Nov 2026, 09:30, not answered yet"],
    [{ state: "confirmed" }, "confirmed Wed 11 Nov 2026, 09:30"],
    [{ state: "did not attend" }, "did not attend Wed 11 Nov 2026, 09:30"],
    [{ where: "Far Dale General" }, "booked elsewhere Wed 11 Nov 2026, 09:30, Far Dale General"],
    [{ where: "Far Dale General", from: null }, "booked elsewhere Wed 11 Nov 2026, Far Dale General"],
  ])("%j", (said, words) => {
    expect(visitInShort({ ...booked, ...said })).toBe(words);
  });
});
