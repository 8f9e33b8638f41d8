import { millilitres } from "#shared/output/microlitre.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { kindOf, tubeKinds } from "#shared/tube/kind/kinds.ts";
import * as make from "#tests/support/factories.ts";
import { patient } from "#tests/support/freeze-patient.ts";

/** What the release with every kind of tube and event leaves behind, beside what the first one held. */

const feeding = patient(
  "a balloon gastrostomy that loses water, then a gastrojejunostomy whose tip moves",
  "1948-03-09",
  make.placed({
    kind: "balloon gastrostomy",
    side: "not sided",
    on: "2026-01-08",
    facts: { balloonMl: confirmed(10), retention: confirmed("balloon"), fixation: confirmed("3 anchors") },
  }),
  make.anchorsRemoved({ on: "2026-01-22", fixation: confirmed("disc") }),
  make.balloonChecked({ on: "2026-01-23", found: confirmed(9.4) }),
  make.balloonChecked({ on: "2026-01-30", found: confirmed(9.2), refilled: confirmed(10) }),
  make.leaking({ on: "2026-02-02", soaking: confirmed(true), toldBy: "the home nurse" }),
  make.checked({ on: "2026-02-03" }),
  make.converted({ kind: "gastrojejunostomy", on: "2026-02-10", facts: { balloonMl: confirmed(8) } }),
  make.tipPosition({ tube: "tube-2", on: "2026-02-10" }),
  make.blocked({ tube: "tube-2", on: "2026-02-20", toldBy: "the home nurse" }),
  make.unblocked({ tube: "tube-2", on: "2026-02-20", how: "warm water", order: 1 }),
  make.tipPosition({
    tube: "tube-2",
    on: "2026-03-02",
    inPlace: confirmed(false),
    where: "back in the stomach",
  }),
  make.repositioned({ tube: "tube-2", on: "2026-03-03", seenHow: "under imaging" }),
  make.downsized({ tube: "tube-2", on: "2026-05-04", size: make.F(7) }),
);

const trials = patient(
  "a drain of the gallbladder: trials, and a removal decided too early",
  "1955-10-01",
  make.placed({ kind: "cholecystostomy", side: "not sided", route: "transhepatic", on: "2026-02-02" }),
  make.called({ on: "2026-02-03" }),
  make.flushed({ on: "2026-02-04", went: "hard", given: confirmed(millilitres(5)), cameBack: unknownFact }),
  make.infected({ on: "2026-02-05", fever: confirmed(true) }),
  make.checked({ on: "2026-02-05", concerns: ["hard to flush"] }),
  make.trialStarted({ on: "2026-02-13", covers: "the ward" }),
  make.called({ on: "2026-02-14" }),
  make.trialFailed({ on: "2026-02-15", note: "pain" }),
  make.trialStarted({ on: "2026-02-16" }),
  make.trialPassed({ on: "2026-02-18" }),
  make.removalDecided({
    on: "2026-02-18",
    by: "2026-02-20",
    owner: { role: "physician", staffId: "staff-1" },
  }),
);

const handovers = patient(
  "handed over, transferred, in hospice, an inpatient, sides swapped",
  "1939-01-31",
  make.placed({ on: "2026-03-02" }),
  make.takenOver({ tube: "tube-2", number: 2, side: "right", on: "2026-03-04", size: unknownFact }),
  make.placed({ kind: "surgical drain", side: "not sided", tube: "tube-3", number: 3, on: "2026-03-04" }),
  make.suctionChanged({ tube: "tube-3", on: "2026-03-05", mode: "to suction", pressure: "-20 cm water" }),
  make.transferred({
    tube: "tube-2",
    on: "2026-03-05",
    findOut: ["size", "what holds it"],
    askWhom: "Far Dale",
  }),
  make.reconcileAsked({ on: "2026-03-06" }),
  make.reconcileAsked({ on: "2026-03-06", about: "two records of one patient", says: "the same address" }),
  make.reconciled({
    on: "2026-03-09",
    sides: [
      { tube: "tube-1", number: 1, side: confirmed("right") },
      { tube: "tube-2", number: 2, side: confirmed("left") },
    ],
  }),
  make.whereaboutsNoted({ on: "2026-03-10", where: "ward 4" }),
  make.bled({ on: "2026-03-11", heavy: unknownFact }),
  make.broken({
    tube: "tube-3",
    on: "2026-03-12",
    fragmentInside: confirmed(true),
    part: "shaft at the skin",
  }),
  make.hospiceDecided({ on: "2026-03-13", until: "2026-06-30", calls: "go on", team: "home hospice" }),
  make.handedOver({ on: "2026-03-16", person: "Dr. Orla Invented" }),
  make.handedOver({ tube: "tube-2", on: "2026-03-16" }),
  make.acceptedElsewhere({ tube: "tube-2", on: "2026-03-18", place: "the urology service" }),
);

const everyKind = patient(
  "one of each kind",
  "1960-06-06",
  ...tubeKinds.map((kind, index) =>
    make.placed({
      kind,
      side: kindOf(kind).sided ? "left" : "not sided",
      tube: `tube-${index + 1}`,
      number: index + 1,
      on: "2026-04-01",
    }),
  ),
);

export const coursePatients = [feeding, trials, handovers, everyKind];
