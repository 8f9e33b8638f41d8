import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import type { Change } from "#shared/visit/change.ts";
import type { Slot } from "#shared/visit/may-book.ts";
import type { Sooner } from "#shared/visit/sooner.ts";
import { changeWords, placeWords, printMinute, slotWords, soonerWords, type VisitNames } from "./offers.ts";

const names: VisitNames = {
  room: (id) => (id === "r1" ? "Room 1" : "Room 2"),
  visit: () => "the visit of Brackenfold",
};
const slot: Slot = { roomId: "r1", on: day("2026-11-11"), from: 570, minutes: 30 };

describe("slots in words", () => {
  it.each([
    [0, "00:00"],
    [570, "09:30"],
    [1439, "23:59"],
  ])("minute %s is %s", (at, words) => {
    expect(printMinute(at)).toBe(words);
  });

  it("name day, time and room", () => {
    expect(slotWords(slot, names)).toBe("Wed 11 Nov 2026, 09:30, Room 1");
  });

  it("say what they stand on", () => {
    const offer = { slot, rank: [0, 0, 0, slot.on, 0, 0], place: "inside the window", left: 90 } as const;
    const sooner = { kind: "first day" } as const;
    expect(placeWords({ ...offer, takesReserve: false, sooner }, [])).toBe(
      "inside the window; keeps what is kept for urgent visits: 90 min of that day stay free",
    );
    expect(placeWords({ ...offer, takesReserve: true, sooner }, [])).toContain("takes from");
    expect(placeWords({ ...offer, takesReserve: false, sooner }, ["Right nephrostomy"])).toContain(
      "of the others; cannot tell for Right nephrostomy;",
    );
    expect(placeWords({ ...offer, place: "no window", takesReserve: false, sooner }, ["any"])).toMatch(
      /^no window can be told/,
    );
  });

  it.each<[Change, string]>([
    [{ code: "patient-comes", weekday: 3, half: null }, "the patient could come on Wednesday"],
    [{ code: "patient-comes", weekday: 3, half: "morning" }, "the patient could come on Wednesday mornings"],
    [
      { code: "ready-sooner", on: day("2026-11-11"), at: 780 },
      "nothing had to be waited for until Wed 11 Nov 2026, 13:00",
    ],
    [{ code: "whole-day", on: day("2026-11-11"), reason: "audit" }, "the clinic were open all day (audit)"],
    [
      { code: "clinic-opens", on: day("2026-11-11"), because: { code: "closure", reason: "audit" } },
      "the clinic were not closed (audit)",
    ],
    [
      { code: "clinic-opens", on: day("2026-11-14"), because: { code: "closed-weekday", weekday: 6 } },
      "the clinic were open on Saturday",
    ],
    [{ code: "visit-moves", bookingId: "b", roomId: "r1" }, "the visit of Brackenfold were not in Room 1"],
    [{ code: "room-could", roomId: "r2", lacks: ["CT", "sedation"] }, "Room 2 had CT and sedation"],
    [
      { code: "room-staffed", roomId: "r2", weekday: 2, hours: { from: 480, to: 960 } },
      "Room 2 were staffed on Tuesday from 08:00 to 16:00",
    ],
  ])("%j", (change, words) => {
    expect(changeWords(change, names)).toBe(words);
  });

  it.each<[Sooner, string]>([
    [{ kind: "first day" }, "It is today."],
    [
      { kind: "free", slot, behind: "target" },
      "Wed 11 Nov 2026, 09:30, Room 1 is free, and is farther from the target.",
    ],
    [
      { kind: "free", slot, behind: "window" },
      "Wed 11 Nov 2026, 09:30, Room 1 is free, and is outside the window.",
    ],
    [
      { kind: "free", slot, behind: "reserve" },
      "Wed 11 Nov 2026, 09:30, Room 1 is free, and takes what is kept for urgent visits.",
    ],
    [{ kind: "offered", slot }, "Wed 11 Nov 2026, 09:30, Room 1 is the better one."],
    [
      { kind: "blocked", on: day("2026-11-10"), change: { code: "room-could", roomId: "r1", lacks: ["CT"] } },
      "Tue 10 Nov 2026 would have one if Room 1 had CT.",
    ],
    [{ kind: "more than one thing" }, "More than one thing stands against each sooner day."],
  ])("%j", (sooner, words) => {
    expect(soonerWords(sooner, names)).toBe(words);
  });
});
