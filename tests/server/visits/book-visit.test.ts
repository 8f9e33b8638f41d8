import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { visitsOf } from "#db/queries/projections.ts";
import { newId } from "#server/ids.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { bookVisit } from "#server/visits/book-visit.ts";
import { clinicSlots } from "#server/visits/clinic-slots.ts";
import { prepareVisit } from "#server/visits/note-visit.ts";
import { standsAgainst } from "#server/visits/stands-against.ts";
import { viewVisit } from "#server/visits/view-visit.ts";
import { visitNames } from "#server/visits/visit-names.ts";
import { instant } from "#shared/day/instant.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { book, clinic, codes, doing, move, NOW, note, slot, states } from "#tests/support/booking-clinic.ts";
import { people } from "#tests/support/database.ts";
import { died, exchanged } from "#tests/support/factories.ts";
import { recordAs } from "#tests/support/patient.ts";
import { command } from "#tests/support/told.ts";

beforeEach(() => vi.useFakeTimers({ toFake: ["Date"], now: new Date(NOW) }));
afterEach(() => vi.useRealTimers());

describe("a visit is booked", () => {
  it("takes the room for as long as the row says", () => {
    using db = clinic();
    const { visitId } = book(db, slot);
    expect(visitsOf(db, "patient-1")).toMatchObject([
      { id: visitId, state: "booked", visitOn: "2026-11-04", fromMinute: 570, minutes: 30, takesRoom: true },
    ]);
    expect(viewVisit(db, { patientId: "patient-1", visitId })).toMatchObject({ room: "Room 1", against: [] });
  });

  it("two nurses cannot take one slot, nor a part of it", () => {
    using db = clinic();
    book(db, slot);
    expect(codes(() => book(db, slot, "patient-2"))).toEqual([["slot-taken", "at"]]);
    expect(codes(() => book(db, { ...slot, at: "9:45" }, "patient-2"))).toEqual([["slot-taken", "at"]]);
    expect(visitsOf(db, "patient-2")).toEqual([]);
    book(db, { ...slot, at: "10:00" }, "patient-2");
  });

  it("the same act sent twice books once", () => {
    using db = clinic();
    const once = {
      actId: newId(),
      patientId: "patient-1",
      lastSeen: 99,
      tubes: [{ tubeId: "tube-1", act: "exchange" as const }],
      urgent: false,
      texts: slot,
    };
    expect(bookVisit(doing(db), once)).toEqual(bookVisit(doing(db), once));
    expect(visitsOf(db, "patient-1")).toHaveLength(1);
  });

  it.each([
    ["the past", { on: "30 oct 2026" }, "slot-past", "on"],
    ["earlier today", { on: "2 nov 2026", at: "7:30" }, "slot-past", "on"],
    ["a day on which the clinic is not open", { on: "7 nov 2026" }, "slot-shut", "on"],
    ["before the room is staffed", { at: "7:30" }, "slot-not-staffed", "at"],
    ["over the end of its hours", { at: "15:45" }, "slot-not-staffed", "at"],
    ["a room that cannot", { room: "Room 2" }, "slot-room-cannot", "room"],
    ["a day on which the patient cannot come", { notOn: "wed" }, "slot-patient-cannot", "on"],
    ["no time", { at: "" }, "text-missing", "at"],
    ["a time that is none", { at: "half past" }, "clock-not-understood", "at"],
    ["no place", { room: "" }, "visit-without-place", "room"],
    ["two places", { elsewhere: "Far Dale General" }, "visit-in-two-places", "elsewhere"],
    ["minutes that are none", { minutes: "0" }, "visit-minutes-not-understood", "minutes"],
  ])("not in %s: nothing is written", (_, texts, code, field) => {
    using db = clinic();
    expect(codes(() => book(db, { ...slot, ...texts }))[0]).toEqual([code, field]);
    expect(visitsOf(db, "patient-1")).toEqual([]);
  });

  it("not twice for one tube", () => {
    using db = clinic();
    book(db, slot);
    expect(codes(() => book(db, { ...slot, on: "5 nov 2026" }))).toEqual([["visit-tube-booked", undefined]]);
  });

  it("hard case 42: booked in the hospital's own system counts as booked here", () => {
    using db = clinic();
    book(db, { elsewhere: "Far Dale General", on: "14 nov 2026", at: "10:00" });
    expect(states(db)).toEqual([["booked", "2026-11-14", 600, false]]);
    expect(codes(() => book(db, slot))).toEqual([["visit-tube-booked", undefined]]);
  });
});

describe("a visit is moved", () => {
  it("gives its slot back and is checked anew", () => {
    using db = clinic();
    const { visitId } = book(db, slot);
    move(db, visitId, { ...slot, at: "11:00" });
    expect(states(db)).toEqual([["booked", "2026-11-04", 660, true]]);
    book(db, slot, "patient-2");
    expect(codes(() => move(db, visitId, slot))).toEqual([["slot-taken", "at"]]);
    expect(codes(() => move(db, visitId, { ...slot, on: "30 oct 2026" }))).toEqual([["slot-past", "on"]]);
    expect(states(db)).toEqual([["booked", "2026-11-04", 660, true]]);
  });

  it("may overlap its own old slot", () => {
    using db = clinic();
    const { visitId } = book(db, slot);
    expect(codes(() => move(db, visitId, { ...slot, at: "9:40" }))).toEqual([]);
  });
});

describe("an undo", () => {
  it("of a cancellation finds the slot free, or is refused", () => {
    using db = clinic();
    const { visitId } = book(db, slot);
    const { actId } = note(db, visitId, "cancelled", { by: "the patient" });
    expect(states(db)).toEqual([["cancelled", "2026-11-04", 570, false]]);
    const taken = book(db, slot, "patient-2");
    const undo = (undoes: string) => undoAct({ db, staff: people.nurse }, { actId: newId(), undoes });
    expect(codes(() => undo(actId))).toEqual([["slot-taken", "at"]]);
    undo(taken.actId);
    undo(actId);
    expect(states(db)).toEqual([["booked", "2026-11-04", 570, true]]);
  });

  it("of a death brings the visit back where it was, and a day says that two stand there", () => {
    using db = clinic();
    const { visitId } = book(db, slot);
    recordAs(db, [{ ...command(died({ on: "2026-11-02" })), eventId: "d" }]);
    book(db, slot, "patient-2");
    recordAs(db, [
      {
        ...command({
          ...died({ on: "2026-11-02" }),
          kind: "voided",
          payload: { reason: "told in error", wrongPatient: false },
          pins: null,
          amends: "d",
        } as never),
        eventId: "v",
      },
    ]);
    expect(states(db)).toEqual([["booked", "2026-11-04", 570, true]]);
    const visit = visitsOf(db, "patient-1")[0]!.visit;
    expect(visit.id).toBe(visitId);
    const slots = clinicSlots(db, instant(Date.parse(NOW)));
    const beside = { clinic: slots, names: visitNames(db, slots) };
    expect(standsAgainst(visit, beside).map(({ code }) => code)).toEqual(["slot-taken"]);
  });
});

describe("what is said of a visit", () => {
  it("nobody arrives, or fails to, before the day; nobody is missed before the time", () => {
    using db = clinic();
    const { visitId } = book(db, slot);
    expect(codes(() => note(db, visitId, "arrived"))).toEqual([["visit-to-come", undefined]]);
    expect(codes(() => note(db, visitId, "did not attend"))).toEqual([["visit-to-come", undefined]]);
    vi.setSystemTime(new Date("2026-11-04T09:00:00Z"));
    expect(codes(() => note(db, visitId, "did not attend"))).toEqual([["visit-to-come", undefined]]);
    note(db, visitId, "arrived");
    expect(states(db)[0]?.[0]).toBe("arrived");
  });

  it("a cancellation says by whom", () => {
    using db = clinic();
    const { visitId } = book(db, slot);
    expect(codes(() => note(db, visitId, "cancelled"))).toEqual([["text-missing", "by"]]);
  });

  it("the exchange is what makes it done", () => {
    using db = clinic();
    book(db, slot);
    vi.setSystemTime(new Date("2026-11-04T11:00:00Z"));
    recordAs(db, [{ ...command(exchanged({ on: "2026-11-04" })), eventId: "x" }]);
    expect(states(db)).toEqual([["done", "2026-11-04", 570, true]]);
  });

  it("what is settled is kept in one act; a blood-thinner plan says who agreed it", () => {
    using db = clinic();
    const { visitId } = book(db, slot);
    const prepare = (texts: Texts) =>
      prepareVisit(doing(db), { actId: newId(), patientId: "patient-1", lastSeen: 99, visitId, texts });
    expect(codes(() => prepare({}))).toEqual([["nothing-said", "signed-order"]]);
    expect(codes(() => prepare({ "blood-thinners": "settled" }))).toEqual([
      ["prepared-without-words", "blood-thinners"],
    ]);
    expect(codes(() => prepare({ labs: "maybe" }))).toEqual([["prepared-not-understood", "labs"]]);
    prepare({ "blood-thinners": "settled: Dr. Orla Invented", escort: "no", labs: "?" });
    const open = viewVisit(db, { patientId: "patient-1", visitId }).prerequisites.filter((one) => one.open);
    expect(open.map(({ thing }) => thing)).toContain("labs");
    expect(open.map(({ thing }) => thing)).not.toContain("blood thinners");
    expect(open.map(({ thing }) => thing)).not.toContain("escort");
  });

  it("a premedication that is needed takes its time before any slot", () => {
    using db = clinic();
    const { visitId } = book(db, slot);
    const { leadHours } = viewVisit(db, { patientId: "patient-1", visitId }).prerequisites.find(
      ({ thing }) => thing === "allergies",
    )!;
    expect(leadHours).toBe(13);
    const texts = { allergies: "needed: contrast" };
    prepareVisit(doing(db), { actId: newId(), patientId: "patient-1", lastSeen: 99, visitId, texts });
    // 8:00 and 13 hours are 21:00 of the same day.
    expect(codes(() => move(db, visitId, { ...slot, on: "2 nov 2026" }))).toEqual([["slot-not-ready", "on"]]);
    expect(codes(() => move(db, visitId, { ...slot, on: "3 nov 2026" }))).toEqual([]);
  });
});
