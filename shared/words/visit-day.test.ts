import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { why } from "#shared/step/draft.ts";
import { toSettle } from "#shared/visit/to-settle.ts";
import { minute } from "#tests/factories/visit.ts";
import { here } from "#tests/support/visit-factories.ts";
import {
  countWords,
  halfDayWords,
  roomDayWords,
  toSettleWords,
  visitStands,
  visitTime,
} from "./visit-day.ts";

const today = day("2026-11-06");
const span = (from: string, to: string) => ({ from: minute(from), to: minute(to) });

describe("when a visit is", () => {
  it.each([
    ["from and to in a room", here("09:30", 40), "09:30 to 10:10"],
    ["up to midnight", here("23:30", 30), "23:30 to 24:00"],
    ["its beginning elsewhere", { kind: "elsewhere", where: "the ward", from: minute("14:05") }, "14:05"],
    ["no time elsewhere", { kind: "elsewhere", where: "the ward", from: null }, "time not known"],
  ] as const)("%s", (_name, place, says) => {
    expect(visitTime(place)).toBe(says);
  });
});

it.each([
  ["booked", null, null, "booked"],
  ["cancelled", "the ward", "fever", "cancelled by the ward: fever"],
  ["did not attend", null, "no transport", "did not attend: no transport"],
] as const)("a visit that stands as %s says by whom and why", (state, by, reason, says) => {
  expect(visitStands({ state, by, reason })).toBe(says);
});

describe("what is open before a visit", () => {
  const line = (thing: string, on: string | null) => why("to-settle", { thing, says: "", day: on });

  it("is read off the lines that ask for it, in the order of the closed list, by the first of its days", () => {
    const lines = [
      why("visit"),
      line("escort", "2026-11-10"),
      line("signed order", "2026-11-09"),
      line("labs", null),
    ];
    expect(toSettle(lines)).toEqual({ things: ["signed order", "labs", "escort"], by: "2026-11-09" });
  });

  it.each([
    [[], null],
    [[line("escort", null)], "1 to settle"],
    [[line("escort", "2026-11-06")], "1 to settle by Fri 6 Nov 2026"],
    [[line("escort", "2026-11-10"), line("labs", "2026-11-12")], "2 to settle, the first by Tue 10 Nov 2026"],
    [[line("escort", "2026-11-05")], "1 to settle was due on Thu 5 Nov 2026"],
    [[line("escort", "2026-11-05"), line("labs", null)], "2 to settle, the first was due on Thu 5 Nov 2026"],
  ] as const)("%# is told with the day", (lines, says) => {
    expect(toSettleWords(toSettle(lines), today)).toBe(says);
  });
});

describe("a room's day in short", () => {
  const room = (reserve: number, free: ReturnType<typeof span>[], visits = 2) =>
    roomDayWords(
      {
        room: { reserve },
        spans: [span("08:00", "12:00"), span("13:00", "16:00")],
        free,
        visits: Array(visits).fill(0),
      },
      false,
    );

  it.each([
    ["nothing is kept", room(0, [span("08:00", "09:00")]), "60 min free"],
    [
      "all that is kept is there",
      room(60, [span("08:00", "09:00")]),
      "60 min free, 60 of them kept for urgent visits",
    ],
    [
      "some of it is taken",
      room(60, [span("08:00", "08:55")]),
      "55 min free, less than the 60 min kept for urgent visits",
    ],
    ["all of it is taken", room(60, []), "0 min free, less than the 60 min kept for urgent visits"],
  ])("%s", (_name, says, free) => {
    expect(says).toBe(`2 visits; staffed 08:00 to 12:00, 13:00 to 16:00; ${free}`);
  });

  it("of a past day nothing is free, and a room that nobody staffs has nothing to be free", () => {
    const of = { room: { reserve: 60 }, free: [], visits: [] };
    expect(roomDayWords({ ...of, spans: [span("08:00", "16:00")] }, true)).toBe(
      "no visit; staffed 08:00 to 16:00",
    );
    expect(roomDayWords({ ...of, spans: [] }, false)).toBe("no visit; not staffed");
  });
});

it("counts and half days are words", () => {
  expect([0, 1, 2].map(countWords)).toEqual(["no visit", "1 visit", "2 visits"]);
  expect(halfDayWords({ on: today, open: "morning", reason: "stocktaking" })).toBe(
    "Open in the morning only: stocktaking.",
  );
});
