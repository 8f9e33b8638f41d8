import { describe, expect, it } from "vitest";
import { confirmed } from "#shared/tube/certainty.ts";
import { bookingOf } from "#shared/visit/visit.ts";
import {
  acceptedElsewhere,
  amended,
  checked,
  died,
  type Entry,
  exchanged,
  fellOut,
  handedOver,
  partlyDislodged,
  placed,
  removed,
  repositioned,
  voided,
} from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { here, visitBooked, visitMoved, visitNoted, visitPrepared } from "#tests/support/visit-factories.ts";
import { fold } from "./fold.ts";

const state = (...entries: readonly Entry[]) => fold(history(placed(), ...entries));
const visit = (...entries: readonly Entry[]) => state(...entries).visits[0]!;
const codes = (...entries: readonly Entry[]) => state(...entries).contradictions.map(({ code }) => code);

const both = [
  { tubeId: "tube-1", act: "exchange" },
  { tubeId: "tube-2", act: "exchange" },
] as const;
const second = placed({ tube: "tube-2", number: 2, side: "right" });
/** The day of the visit. */
const then = "2026-11-04";

describe("a visit as its entries make it", () => {
  it("is booked with its tubes and its slot", () => {
    expect(visit(visitBooked())).toMatchObject({
      id: "visit-1",
      state: "booked",
      on: then,
      tubes: [{ tubeId: "tube-1", act: "exchange" }],
      revision: 0,
      moved: 0,
    });
  });

  it("is confirmed, then there", () => {
    expect(visit(visitBooked(), visitNoted({ on: "2026-10-30", by: "the patient" }))).toMatchObject({
      state: "confirmed",
      by: "the patient",
      revision: 1,
    });
    expect(visit(visitBooked(), visitNoted({ state: "arrived" })).state).toBe("arrived");
  });

  it("whoever confirmed one slot has not confirmed another", () => {
    const moved = visit(
      visitBooked(),
      visitNoted({ on: "2026-09-01" }),
      visitMoved({ place: here("14:00") }),
    );
    expect(moved).toMatchObject({ state: "booked", on: "2026-11-05", moved: 1, revision: 2 });
    expect(bookingOf(moved)).toMatchObject({ on: "2026-11-05", from: 840 });
  });

  it("what was only proposed stays so when it is moved", () => {
    expect(visit(visitBooked({ state: "proposed" }), visitMoved()).state).toBe("proposed");
  });

  it("keeps the newest answer to each thing that is to be settled", () => {
    const { prepared, revision } = visit(
      visitBooked(),
      visitPrepared({ thing: "labs", state: "open" }),
      visitPrepared({ thing: "escort", by: "the daughter" }),
      visitPrepared({ thing: "labs", state: "settled", on: "2026-09-10" }),
    );
    expect(prepared.map(({ thing, state: stands }) => [thing, stands])).toEqual([
      ["escort", "settled"],
      ["labs", "settled"],
    ]);
    expect(revision).toBe(0);
  });

  it("takes no more entries once it is over, and none speaks of a visit that is not booked", () => {
    const over = [visitBooked(), visitNoted({ state: "cancelled", by: "the patient", on: "2026-09-02" })];
    expect(codes(...over, visitMoved({ on: "2026-09-03" }))).toEqual(["visit-over"]);
    expect(codes(visitMoved())).toEqual(["visit-not-booked"]);
    expect(codes(visitBooked({ tubes: [{ tubeId: "tube-9", act: "check" }] }))).toEqual([
      "event-before-opening",
    ]);
  });

  it("comes back with the undo of its cancellation", () => {
    const cancelled = visitNoted({ id: "no", state: "cancelled", by: "the ward", on: "2026-09-02" });
    expect(bookingOf(visit(visitBooked(), cancelled))).toBeNull();
    expect(bookingOf(visit(visitBooked(), cancelled, voided("no", { on: "2026-09-02" })))).not.toBeNull();
  });

  it("an entry put right counts as it reads now", () => {
    const other = amended("visit-1", visitBooked({ visitOn: "2026-11-06" }), { on: "2026-09-02" });
    expect(visit(visitBooked(), other).on).toBe("2026-11-06");
  });
});

describe("what is on record of its tubes answers a visit", () => {
  it.each([
    ["exchanged", exchanged({ on: then })],
    ["removed instead", removed({ on: then })],
    ["only checked", checked({ on: then })],
    ["only put back", repositioned({ on: then })],
  ])("on its day: %s", (_, entry) => {
    expect(visit(visitBooked(), entry)).toMatchObject({ state: "done", answered: [{ did: true }] });
  });

  it("a check before its day is not the exchange", () => {
    expect(visit(visitBooked(), checked({ on: "2026-10-01" })).state).toBe("booked");
    expect(
      visit(visitBooked({ tubes: [{ tubeId: "tube-1", act: "check" }] }), checked({ on: "2026-10-01" })),
    ).toMatchObject({ state: "cancelled", reason: "done before its day" });
  });

  it("an exchange before its day gives the slot back", () => {
    const early = visit(visitBooked(), exchanged({ on: "2026-10-01" }));
    expect(early).toMatchObject({ state: "cancelled", reason: "done before its day" });
    expect(bookingOf(early)).toBeNull();
  });

  it("an exchange from before it was booked answers nothing", () => {
    expect(visit(visitBooked(), exchanged({ on: "2026-08-28" })).state).toBe("booked");
  });

  it("is done once each of its tubes is answered for", () => {
    const first = [second, visitBooked({ tubes: both }), exchanged({ on: then })];
    expect(visit(...first)).toMatchObject({ state: "booked", answered: [{ tubeId: "tube-1" }] });
    expect(visit(...first, exchanged({ tube: "tube-2", on: then })).state).toBe("done");
  });

  it("the undo of the exchange opens it again", () => {
    const done = exchanged({ id: "x", on: then });
    expect(visit(visitBooked(), done, voided("x", { on: then })).state).toBe("booked");
  });

  it("a removal is not answered by an exchange before its day", () => {
    const removal = visitBooked({ tubes: [{ tubeId: "tube-1", act: "removal" }] });
    expect(visit(removal, exchanged({ on: "2026-10-01" })).state).toBe("booked");
  });

  it("ends with the patient, or with the record of its tube", () => {
    expect(visit(visitBooked(), died({ on: "2026-10-01" }))).toMatchObject({
      state: "cancelled",
      reason: "died",
    });
    const elsewhere = [handedOver({ on: "2026-10-01" }), acceptedElsewhere({ on: "2026-10-02" })];
    expect(visit(visitBooked(), ...elsewhere)).toMatchObject({
      state: "cancelled",
      reason: "the record ended",
    });
  });

  it("a death that is dated before the booking cancels it as one, so that its undo brings it back", () => {
    expect(visit(visitBooked(), died({ on: "2026-08-20", recordedOn: "2026-09-05" }))).toMatchObject({
      state: "cancelled",
      reason: "died",
    });
  });

  it("a death that is undone brings it back", () => {
    expect(
      visit(visitBooked(), died({ id: "d", on: "2026-10-01" }), voided("d", { on: "2026-10-01" })).state,
    ).toBe("booked");
  });

  it("a tube that slips out turns its visit urgent, and the visit stands", () => {
    expect(visit(visitBooked(), fellOut({ on: "2026-10-01" }))).toMatchObject({
      urgent: true,
      state: "booked",
    });
    expect(
      visit(visitBooked(), partlyDislodged({ on: "2026-10-01", externalLength: confirmed(1 as never) }))
        .urgent,
    ).toBe(true);
    expect(visit(second, visitBooked(), fellOut({ tube: "tube-2", on: "2026-10-01" })).urgent).toBe(false);
  });
});
