import { confirmed } from "#shared/tube/certainty.ts";
import * as make from "#tests/support/factories.ts";
import { patient } from "#tests/support/freeze-patient.ts";

/** Anchors and sutures that are due out: asked, taken out in part, a conversion, a new puncture, a suture put in anew, a tube of unknown beginning. */

const gastrostomies = patient(
  "three gastrostomies: anchors that nobody spoke of, one of three left, none",
  "1950-02-03",
  make.placed({ kind: "balloon gastrostomy", side: "not sided", on: "2026-08-14" }),
  make.placed({
    kind: "loop gastrostomy",
    side: "not sided",
    tube: "tube-2",
    number: 2,
    on: "2026-08-14",
    facts: { fixation: confirmed("3 anchors") },
  }),
  make.placed({
    kind: "venting gastrostomy",
    side: "not sided",
    tube: "tube-3",
    number: 3,
    on: "2026-08-14",
    facts: { fixation: confirmed("no anchors, disc") },
  }),
  make.anchorsRemoved({ tube: "tube-2", on: "2026-08-25", fixation: confirmed("1 anchor, disc") }),
  make.exchanged({ tube: "tube-3", on: "2026-09-01" }),
);

const inOneTract = patient(
  "anchors out, converted in the same tract, then a new puncture",
  "1961-11-30",
  make.placed({ kind: "balloon gastrostomy", side: "not sided", on: "2026-08-14" }),
  make.anchorsRemoved({ on: "2026-08-25" }),
  make.converted({ kind: "gastrojejunostomy", side: "not sided", on: "2026-09-04" }),
  make.fellOut({ tube: "tube-2", on: "2026-09-07" }),
  make.newPuncture({ tube: "tube-2", on: "2026-09-08" }),
);

const sewnAgain = patient(
  "a suture out, another catheter, and one taken over without a day",
  "1939-05-05",
  make.placed({ kind: "tunnelled pleural catheter", on: "2026-08-14" }),
  make.anchorsRemoved({ on: "2026-08-31", what: "the skin suture" }),
  make.exchanged({ on: "2026-09-04" }),
  make.takenOver({
    kind: "balloon gastrostomy",
    side: "not sided",
    tube: "tube-2",
    number: 2,
    on: "2026-06-01",
    recordedOn: "2026-09-04",
  }),
);

export const anchorPatients = [gastrostomies, inOneTract, sewnAgain];
