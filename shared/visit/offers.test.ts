import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { booking, minute, openWeeks, room, slotQuestion, visitWindow } from "#tests/factories/visit.ts";
import { changed } from "./change.ts";
import type { SlotQuestion } from "./offers.ts";
import { bestOfDay } from "./offers.ts";
import { offers } from "./sooner.ts";
import { jointWindow } from "./window.ts";

const told = (question: SlotQuestion) =>
  offers(question).map(({ slot, place }) => `${slot.on} ${slot.from / 60} ${slot.roomId} ${place}`);

describe("three slots", () => {
  it("are the nearest to the target inside the window, one for each half of a day", () => {
    expect(told(slotQuestion())).toEqual([
      "2026-11-11 8 room-1 inside the window",
      "2026-11-11 12 room-1 inside the window",
      "2026-11-10 8 room-1 inside the window",
    ]);
  });

  it("without a target, are the soonest inside the window; without any date, the soonest", () => {
    expect(told(slotQuestion({ window: visitWindow("2026-11-09", null, null) }))[0]).toContain(
      "2026-11-09 8",
    );
    expect(told(slotQuestion({ window: visitWindow(null, null, null) }))[0]).toContain("2026-11-02 8");
  });

  it("leave the window before they pass its latest, and say so", () => {
    const full = {
      calendar: {
        ...openWeeks,
        closures: [{ from: day("2026-11-09"), to: day("2026-11-20"), reason: "rebuilding" }],
      },
    };
    const [first, ...rest] = offers(slotQuestion({ clinic: full }));
    expect(first).toMatchObject({ slot: { on: "2026-11-06" }, place: "before the earliest" });
    expect(rest.every(({ place }) => place === "before the earliest")).toBe(true);
    expect(told(slotQuestion({ clinic: full, days: 30 })).some((one) => one.includes("past"))).toBe(false);
  });

  it("of a planned visit keep the room's reserve where they can; an urgent one takes it, today", () => {
    const kept = room({ reserve: 60 });
    const full = ["08:00", "10:00", "12:00"].map((from) => booking({ on: "2026-11-11", from, minutes: 120 }));
    const late = booking({ on: "2026-11-11", from: "14:00", minutes: 60 });
    const question = slotQuestion({ clinic: { rooms: [kept], booked: [...full, late] } });
    const [first] = offers(question);
    expect(first).toMatchObject({ slot: { on: "2026-11-10" }, takesReserve: false });

    const urgent = slotQuestion({
      urgent: true,
      window: visitWindow(null, "2026-11-11", null),
      clinic: { rooms: [kept], booked: [...full, late], now: { on: day("2026-11-11"), at: minute("09:10") } },
    });
    expect(offers(urgent)[0]).toMatchObject({
      slot: { on: "2026-11-11", from: minute("15:00") },
      takesReserve: false,
      left: 30,
    });
  });

  it("take the reserve only where nothing else is free in the window, and say so", () => {
    const all = ["2026-11-09", "2026-11-10"].map((on) => booking({ on, from: "08:00", minutes: 420 }));
    const question = slotQuestion({
      window: visitWindow("2026-11-09", "2026-11-09", "2026-11-10"),
      clinic: { rooms: [room({ reserve: 60 })], booked: all },
    });
    expect(offers(question)[0]).toMatchObject({
      slot: { on: "2026-11-09", from: minute("15:00") },
      takesReserve: true,
      left: 30,
    });
  });

  it("never stand in the past or in the next quarter of an hour, on a half that is shut, or before the patient is ready", () => {
    const window = visitWindow(null, "2026-11-02", null);
    const now = { on: day("2026-11-02"), at: minute("09:02") };
    expect(told(slotQuestion({ window, clinic: { now } }))[0]).toContain(`2026-11-02 ${(9 * 60 + 20) / 60} `);
    const halved = {
      ...openWeeks,
      halfDays: [{ on: day("2026-11-02"), open: "afternoon", reason: "audit" } as const],
    };
    expect(told(slotQuestion({ window, clinic: { calendar: halved } }))[0]).toContain("2026-11-02 12 ");
    const readyFrom = { on: day("2026-11-02"), at: minute("13:00") };
    expect(told(slotQuestion({ window, asked: { readyFrom } }))[0]).toContain("2026-11-02 13 ");
  });

  it("are none where no room can do it", () => {
    expect(offers(slotQuestion({ asked: { needs: ["CT"] } }))).toEqual([]);
  });
});

describe("why not sooner", () => {
  it("a sooner one is free, and stands farther from the target", () => {
    expect(offers(slotQuestion({ window: visitWindow(null, "2026-11-04", null) }))[0]?.sooner).toMatchObject({
      kind: "free",
      behind: "target",
      slot: { on: "2026-11-03" },
    });
  });

  it("a sooner one is free before the earliest date alone", () => {
    const window = visitWindow("2026-11-09", "2026-11-09", "2026-11-20");
    expect(offers(slotQuestion({ window }))[0]?.sooner).toMatchObject({ kind: "free", behind: "window" });
  });

  it("it is offered on the first day that is looked at", () => {
    expect(offers(slotQuestion({ window: visitWindow(null, null, null) }))[0]?.sooner).toEqual({
      kind: "first day",
    });
  });

  // Each stands alone against a slot on Tuesday; Monday has gone by for another reason.
  const tuesday = day("2026-11-03");
  const soon = { window: visitWindow(null, "2026-11-03", null) };
  const monday = booking({ on: "2026-11-02", from: "08:00", minutes: 480 });
  it.each<[string, SlotQuestion, object]>([
    [
      "the clinic is closed on it",
      slotQuestion({
        ...soon,
        clinic: {
          booked: [monday],
          calendar: { ...openWeeks, closures: [{ from: tuesday, to: tuesday, reason: "audit" }] },
        },
      }),
      { code: "clinic-opens", on: "2026-11-03", because: { code: "closure", reason: "audit" } },
    ],
    [
      "the room is taken by one visit",
      slotQuestion({
        ...soon,
        clinic: { booked: [monday, booking({ id: "b", on: "2026-11-03", from: "08:00", minutes: 480 })] },
      }),
      { code: "visit-moves", bookingId: "b" },
    ],
    [
      "the room cannot do it",
      slotQuestion({
        ...soon,
        asked: { needs: ["CT"] },
        clinic: {
          booked: [monday],
          rooms: [
            room(),
            room({ id: "room-2", can: ["fluoroscopy", "CT"], hours: [{ weekday: 3, from: 480, to: 960 }] }),
          ],
        },
      }),
      { code: "room-could", roomId: "room-1", lacks: ["CT"] },
    ],
    [
      "nobody staffs the room",
      slotQuestion({
        ...soon,
        clinic: { booked: [monday], rooms: [room({ hours: [{ weekday: 3, from: 480, to: 960 }] })] },
      }),
      { code: "room-staffed", roomId: "room-1", weekday: 2 },
    ],
    [
      "the patient cannot come",
      slotQuestion({ ...soon, clinic: { booked: [monday] }, asked: { notOn: [{ weekday: 2, half: null }] } }),
      { code: "patient-comes", weekday: 2 },
    ],
    [
      "the premedication takes its time",
      slotQuestion({
        ...soon,
        clinic: { booked: [monday] },
        asked: { readyFrom: { on: day("2026-11-04"), at: 480 } },
      }),
      { code: "ready-sooner", on: "2026-11-04" },
    ],
    [
      "only half of it is open, and that is taken",
      slotQuestion({
        ...soon,
        clinic: {
          rooms: [
            room({ hours: [2, 3].map((weekday) => ({ weekday: weekday as 2 | 3, from: 480, to: 720 })) }),
          ],
          calendar: { ...openWeeks, halfDays: [{ on: tuesday, open: "afternoon", reason: "audit" }] },
        },
      }),
      { code: "whole-day", on: "2026-11-03", reason: "audit" },
    ],
  ])("%s: the one change is named, and with it there is a slot", (_name, question, change) => {
    const [first] = offers(question);
    const { sooner } = first!;
    expect(first?.slot.on).toBe("2026-11-04");
    expect(sooner).toMatchObject({ kind: "blocked", on: "2026-11-03", change });
    if (sooner.kind !== "blocked") return;
    expect(bestOfDay(tuesday, question)).toEqual([]);
    expect(bestOfDay(tuesday, changed(question, sooner.change))).not.toEqual([]);
  });

  it("more than one thing stands against each sooner day", () => {
    const closures = [{ from: day("2026-11-02"), to: day("2026-11-03"), reason: "audit" }];
    const question = slotQuestion({
      ...soon,
      clinic: { calendar: { ...openWeeks, closures } },
      asked: { notOn: [1, 2].map((weekday) => ({ weekday: weekday as 1 | 2, half: null })) },
    });
    expect(offers(question)[0]?.sooner).toEqual({ kind: "more than one thing" });
  });
});

describe("several tubes in one visit (hard case 1)", () => {
  const of = (tubeId: string, ...ends: Parameters<typeof visitWindow>) => ({
    tubeId,
    window: visitWindow(...ends),
  });

  it("do not pass the earlier latest date, and wait for the later earliest", () => {
    expect(
      jointWindow([
        of("left", "2026-11-02", "2026-11-16", "2026-11-27"),
        of("right", "2026-11-09", "2026-11-23", "2026-12-04"),
      ]),
    ).toEqual({
      earliest: "2026-11-09",
      target: "2026-11-16",
      latest: "2026-11-27",
      latestOf: "left",
      early: [],
    });
  });

  it("out of step by more than a window, the one that is done early is named and the latest date is kept", () => {
    expect(
      jointWindow([
        of("left", "2026-11-02", "2026-11-16", "2026-11-27"),
        of("right", "2026-12-07", "2026-12-21", "2027-01-04"),
      ]),
    ).toEqual({
      earliest: "2026-11-02",
      target: "2026-11-16",
      latest: "2026-11-27",
      latestOf: "left",
      early: ["right"],
    });
  });

  it("a target that lies outside what both allow is brought inside", () => {
    expect(
      jointWindow([
        of("left", "2026-11-09", "2026-11-20", null),
        of("right", null, "2026-11-02", "2026-11-13"),
      ]),
    ).toMatchObject({ earliest: "2026-11-09", target: "2026-11-09", latest: "2026-11-13" });
    expect(
      jointWindow([of("left", null, "2026-11-20", null), of("right", null, null, "2026-11-13")]),
    ).toMatchObject({
      target: "2026-11-13",
      latestOf: "right",
    });
  });

  it("without a date have no window", () => {
    expect(jointWindow([])).toEqual({
      earliest: null,
      target: null,
      latest: null,
      latestOf: null,
      early: [],
    });
  });
});
