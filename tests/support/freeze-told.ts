import { confirmed } from "#shared/tube/certainty.ts";
import * as make from "#tests/support/factories.ts";
import { patient } from "#tests/support/freeze-patient.ts";

/** Told by others: one of several tubes is out, and two records are one person's; and what a clinician ends by decision. */

const whichOut = patient(
  "told that one of three is out, not which; then which; told again and reconciled",
  "1951-09-09",
  make.placed({ kind: "ureteral stent", on: "2026-03-02", plan: { act: "remove", by: "2026-06-01" } }),
  make.placed({ tube: "tube-2", number: 2, on: "2026-03-02" }),
  make.placed({ kind: "ureteral stent", tube: "tube-3", number: 3, on: "2026-03-02" }),
  make.reportedOut({
    on: "2026-04-01",
    candidates: [1, 2, 3].map((number) => ({ tube: `tube-${number}`, number })),
    note: "by telephone",
  }),
  make.removed({ tube: "tube-3", on: "2026-03-31", toldBy: "urology" }),
  make.reportedOut({ on: "2026-04-20" }),
  make.reconciled({ on: "2026-04-22", about: "which tube", how: "both seen on the film" }),
  make.reportedOut({ on: "?", recordedOn: "2026-05-04" }),
);

const joined = patient(
  "two records joined: the tube of the other has a number of its own from then on",
  "1947-02-14",
  make.placed({ on: "2026-03-02" }),
  make.reconcileAsked({ on: "2026-03-20", about: "two records of one patient", says: "the same address" }),
  make.placed({ tube: "tube-9", side: "right", on: "2026-03-05" }),
  make.exchanged({ tube: "tube-9", on: "2026-05-28" }),
  make.recordsJoined({ on: "2026-06-01", offset: 2, numbers: [{ tube: "tube-9", number: 2 }] }),
  make.partlyDislodged({ tube: "tube-9", on: "2026-06-03" }),
);

const fragment = patient(
  "a piece that stays by decision, and a removal that nobody can confirm",
  "1939-09-30",
  make.placed({ on: "2026-03-02" }),
  make.placed({ kind: "ureteral stent", tube: "tube-2", number: 2, on: "2026-03-02" }),
  make.removed({ on: "2026-05-11", whole: confirmed(false) }),
  make.followUpEnded({ on: "2026-05-13" }),
  make.removed({ tube: "tube-2", on: "2026-05-12", toldBy: "another hospital" }),
  make.followUpEnded({ tube: "tube-2", on: "2026-06-12", reason: "that hospital keeps no record of it" }),
);

export const toldPatients = [whichOut, joined, fragment];
