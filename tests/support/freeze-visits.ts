import * as make from "#tests/support/factories.ts";
import { patient } from "#tests/support/freeze-patient.ts";
import { here, visitBooked, visitMoved, visitNoted, visitPrepared } from "#tests/support/visit-factories.ts";

/** Visits: booked, moved, prepared and done; not attended; elsewhere; cancelled by a death. */

const booked = patient(
  "two nephrostomies in one visit, moved once, prepared in part, one exchanged on its day",
  "1950-02-03",
  make.placed({ on: "2026-08-14" }),
  make.placed({ on: "2026-08-14", tube: "tube-2", number: 2, side: "right" }),
  visitBooked({
    state: "proposed",
    tubes: [
      { tubeId: "tube-1", act: "exchange" },
      { tubeId: "tube-2", act: "exchange" },
    ],
    place: here("09:30", 50),
    needs: ["fluoroscopy"],
    notOn: [
      { weekday: 1, half: null },
      { weekday: 2, half: "afternoon" },
    ],
    note: "with the daughter",
  }),
  visitMoved({ place: here("10:30", 50), by: "the patient", reason: "dialysis" }),
  visitPrepared({ thing: "blood thinners", by: "Dr. Orla Invented", says: "plan agreed" }),
  visitPrepared({ thing: "allergies", state: "needs its lead time" }),
  visitPrepared({ thing: "interpreter", state: "does not apply" }),
  visitNoted({ on: "2026-10-15" }),
  visitNoted({ on: "2026-11-05", at: "10:20", state: "arrived" }),
  make.exchanged({ on: "2026-11-05", at: "10:50" }),
);

const missed = patient(
  "did not attend, booked elsewhere, then out: urgent",
  "1961-11-30",
  make.placed({ on: "2026-08-14" }),
  visitBooked(),
  visitNoted({ state: "did not attend", on: "2026-11-04", at: "12:00" }),
  visitBooked({
    id: "visit-2",
    on: "2026-11-05",
    visitOn: "2026-11-14",
    place: { kind: "elsewhere", where: "Far Dale General", from: 600 },
  }),
  make.fellOut({ on: "2026-11-10" }),
);

const died = patient(
  "a visit that a death cancels",
  "1939-05-05",
  make.placed({ on: "2026-08-14" }),
  visitBooked(),
  make.died({ on: "2026-10-01" }),
);

export const visitPatients = [booked, missed, died];
