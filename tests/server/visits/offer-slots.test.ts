import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { addCalendarVersion } from "#db/queries/versions.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { offerSlots } from "#server/visits/offer-slots.ts";
import { viewDays } from "#server/visits/view-days.ts";
import { viewVisit } from "#server/visits/view-visit.ts";
import { day } from "#shared/day/day.ts";
import { instant } from "#shared/day/instant.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { printMinute } from "#shared/words/offers.ts";
import { book, clinic, codes, NOW, slot } from "#tests/support/booking-clinic.ts";
import { fellOut, placed } from "#tests/support/factories.ts";
import { recordAs } from "#tests/support/patient.ts";
import { command } from "#tests/support/told.ts";

beforeEach(() => vi.useFakeTimers({ toFake: ["Date"], now: new Date(NOW) }));
afterEach(() => vi.useRealTimers());

describe("three slots", () => {
  const taken = (db: Database, n = 0): Texts => {
    const { offers, minutes } = offerSlots(db, { patientId: "patient-1" });
    const { slot: best } = offers[n]!;
    return { on: printDay(best.on), at: printMinute(best.from), room: "Room 1", minutes: String(minutes) };
  };

  it("each of them can be booked as it is offered", () => {
    for (const n of [0, 1, 2]) {
      using db = clinic();
      expect(codes(() => book(db, taken(db, n)))).toEqual([]);
    }
  });

  it("are inside the window, at most one for each half of a day", () => {
    using db = clinic();
    const { offers, window, needs } = offerSlots(db, { patientId: "patient-1" });
    expect(window).toMatchObject({ earliest: "2026-10-16", target: "2026-10-30", latest: "2026-11-12" });
    expect(needs.minutes).toBe(30);
    expect(offers.map(({ slot: { on, from } }) => [on, from])).toEqual([
      ["2026-11-02", 495],
      ["2026-11-02", 720],
      ["2026-11-03", 480],
    ]);
    for (const { place } of offers) expect(place).toBe("inside the window");
  });

  it("a tube that fell out turns urgent, takes what is kept free, and says for how long it is out and how old its tract is", () => {
    using db = clinic();
    // Only the reserve of 60 minutes is left of today.
    const all = { on: "2 nov 2026", at: "8:00", room: "Room 1", minutes: "420" };
    book(db, all, "patient-2");
    expect(offerSlots(db, { patientId: "patient-1" }).offers[0]?.slot.on).toBe("2026-11-03");
    recordAs(db, [{ ...command(fellOut({ on: "2026-11-02", at: "05:00" })), eventId: "out" }]);
    const { urgent, offers, tubes } = offerSlots(db, { patientId: "patient-1" });
    expect(urgent).toBe(true);
    expect(offers[0]).toMatchObject({ slot: { on: "2026-11-02", from: 900 }, left: 30 });
    expect(tubes[0]?.out).toBe(
      "out for 3 hours; tract 80 days, punctured Fri 14 Aug 2026; Past the row's limit for an immature tract, 14 days.",
    );
  });

  it("what an urgent visit would displace is said, where nothing is free today", () => {
    using db = clinic();
    book(db, { on: "2 nov 2026", at: "8:00", room: "Room 1", minutes: "480" }, "patient-2");
    const { offers } = offerSlots(db, { patientId: "patient-1", urgent: true });
    expect(offers[0]?.slot.on).toBe("2026-11-03");
    expect(offers[0]?.notSooner).toContain("Brackenfold, Ottoline, 08:00 for 480 min were not in Room 1");
  });

  it("a closure that comes later leaves the visit where it is, and says so", () => {
    using db = clinic();
    const { visitId } = book(db, slot);
    inTransaction(db, (tx) =>
      addCalendarVersion(tx, {
        version: 2,
        content: {
          openWeekdays: [1, 2, 3, 4, 5],
          closures: [{ from: day("2026-11-04"), to: day("2026-11-06"), reason: "a flood" }],
        },
        createdAt: instant(Date.parse(NOW)),
      }),
    );
    expect(viewVisit(db, { patientId: "patient-1", visitId }).against.map(({ code }) => code)).toEqual([
      "slot-shut",
    ]);
    const [shut] = viewDays(db, { from: day("2026-11-04"), days: 1 }).days;
    expect(shut).toMatchObject({
      shut: "a flood",
      rooms: [{ spans: [], visits: [{ visit: { id: visitId } }] }, {}],
    });
    for (const offer of offerSlots(db, { patientId: "patient-2" }).offers)
      expect(["2026-11-04", "2026-11-05", "2026-11-06"]).not.toContain(offer.slot.on);
  });

  it("a visit that is moved is not offered the slot that it has", () => {
    using db = clinic();
    const { offers } = offerSlots(db, { patientId: "patient-1" });
    const best = offers[0]!.slot;
    const { visitId } = book(db, taken(db));
    const again = offerSlots(db, { patientId: "patient-1", moves: visitId });
    expect(again.offers).toHaveLength(3);
    expect(again.offers.map((one) => one.slot)).not.toContainEqual(best);
  });

  it("a tube that nobody can date is never said to be inside its window", () => {
    using db = clinic();
    recordAs(
      db,
      [
        {
          ...command(placed({ tube: "tube-9", number: 2, side: "right", on: "?", recordedOn: "2026-10-01" })),
          eventId: "p9",
        },
      ],
      "patient-1",
    );
    const tubes = [{ tubeId: "tube-9", act: "exchange" as const }];
    const alone = offerSlots(db, { patientId: "patient-1", tubes });
    expect(alone.tubes.map(({ undated }) => undated)).toEqual([true]);
    for (const { place, stands } of alone.offers) {
      expect(place).toBe("no window");
      expect(stands).toMatch(/^no window can be told: the sooner the better/);
    }
    const both = [...tubes, { tubeId: "tube-1", act: "exchange" as const }];
    const together = offerSlots(db, { patientId: "patient-1", tubes: both });
    expect(together.tubes.map(({ undated }) => undated)).toEqual([true, false]);
    for (const { stands } of together.offers)
      expect(stands).toMatch(/^inside the window of the others; cannot tell for Right nephrostomy/);
  });
});
