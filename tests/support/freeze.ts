import { exampleProtocol } from "#shared/protocol/example.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import * as make from "#tests/support/factories.ts";
import { alarmPatients } from "#tests/support/freeze-alarm.ts";
import { anchorPatients } from "#tests/support/freeze-anchors.ts";
import { callPatients } from "#tests/support/freeze-calls.ts";
import { clinicalPatients } from "#tests/support/freeze-clinical.ts";
import { coursePatients } from "#tests/support/freeze-course.ts";
import { fluidPatients } from "#tests/support/freeze-fluid.ts";
import { patient } from "#tests/support/freeze-patient.ts";
import { reviewPatients } from "#tests/support/freeze-review.ts";
import { toldPatients } from "#tests/support/freeze-told.ts";
import { visitPatients } from "#tests/support/freeze-visits.ts";
import { type FrozenEvents, freeze, frozenEvents, frozenReleases } from "#tests/support/frozen.ts";
import { calendar } from "#tests/support/told.ts";

/**
 * Freezes the events of a release: `npx tsx tests/support/freeze.ts 0.1.0`, once, at its end. A later release writes files of its own
 * beside these, with whatever kinds and payload versions it has by then.
 */

const { F, inch } = make;
const bore = { place: "shaft" as const, inside: confirmed(inch(0.05)), tolerance: null };

const longLife = patient(
  "a nephrostomy through everything that keeps it in",
  "1950-02-03",
  make.placed({ on: "2026-01-09", at: "09:30", facts: { takes: confirmed(inch(0.035)), bores: [bore] } }),
  make.called({ on: "2026-01-12", outcome: "not reached" }),
  make.called({ on: "2026-01-13" }),
  make.conditionsNoted({
    on: "2026-01-13",
    conditions: { stoneFormer: confirmed(true), diabetes: unknownFact },
  }),
  make.checked({ on: "2026-01-30", study: "nephrostogram", concerns: ["crusted"] }),
  make.capped({ on: "2026-02-02", at: "11:00" }),
  make.uncapped({ on: "2026-02-04", at: "08:15" }),
  make.exchangePlanned({ on: "2026-02-04", planned: "2026-02-20" }),
  make.stepAssigned({ on: "2026-02-05", owner: { role: "nurse", staffId: "staff-1" } }),
  make.upsized({ on: "2026-02-20", size: F(10), difficult: true }),
  make.partlyDislodged({ on: "2026-03-02", externalLength: confirmed(F(300)) }),
  make.fellOut({ on: "2026-03-03", at: "07:00" }),
  make.salvaged({
    on: "2026-03-03",
    at: "10:40",
    plan: { act: "exchange", by: "2026-04-10", reason: "travel" },
  }),
  make.exchanged({ on: "2026-04-09", at: "03:10", elsewhere: "Far Dale General", recordedOn: "2026-04-13" }),
  make.verified({ on: "2026-04-15" }),
  make.factsNoted({
    on: "2026-04-15",
    facts: { size: confirmed(F(10)), retention: confirmed("locking loop") },
  }),
  make.datesConfirmed({ on: "2026-04-16" }),
  make.fellOut({ on: "2026-04-20" }),
  make.newPuncture({ on: "2026-04-21" }),
  make.tipPosition({ on: "2026-04-22", inPlace: confirmed(true) }),
);

const conversions = patient(
  "taken over undated, converted twice",
  "1961-11-30",
  make.takenOver({ on: "?", recordedOn: "2026-03-06", from: "Far Dale General", size: unknownFact }),
  make.clockDated({ on: "2026-03-09", since: "2026-02-01..2026-02-28" }),
  make.converted({ on: "2026-03-20" }),
  make.converted({
    kind: "ureteral stent",
    closes: "tube-2",
    opens: "tube-3",
    number: 3,
    on: "2026-04-10",
    plan: { act: "remove", by: "2026-06-05", byWhom: "the operator" },
  }),
);

const corrected = patient(
  "an entry corrected twice, one voided, a plan, one contradiction",
  null,
  make.placed({ kind: "abscess drain", side: "not sided", size: F(12), on: "2026-05-04" }),
  make.checked({ id: "check", on: "2026-05-18" }),
  make.amended("check", make.checked({ on: "2026-05-19" }), { id: "first", on: "2026-05-20" }),
  make.amended("first", make.amended("check", make.checked({ on: "2026-05-15" })), { on: "2026-05-21" }),
  make.capped({ id: "cap", on: "2026-05-22" }),
  make.voided("cap", { on: "2026-05-22" }),
  make.planRecorded({ on: "2026-05-25", act: "remove", by: "2026-06-01" }),
  make.uncapped({ on: "2026-05-26" }),
);

const endings = patient(
  "every way out",
  "1944-07-07",
  ...[1, 2, 3, 4].map((n) => make.placed({ tube: `tube-${n}`, number: n, on: "2026-06-01" })),
  make.removed({ tube: "tube-1", on: "2026-06-15", toldBy: "the ward" }),
  make.removed({ tube: "tube-2", on: "2026-06-16", whole: confirmed(false) }),
  make.fellOut({ tube: "tube-3", on: "2026-06-17", whole: unknownFact }),
  make.notReplaced({ tube: "tube-3", on: "2026-06-18" }),
);

const death = patient(
  "a death",
  "1939-05-05",
  make.placed({ on: "2026-07-01" }),
  make.died({ on: "2026-07-01..2026-07-31", recordedOn: "2026-08-03", toldBy: "the family doctor" }),
);

const child = patient("a child", "2012-12-12", make.placed({ on: "2026-08-14", plan: null }));

const patients = [
  longLife,
  conversions,
  corrected,
  endings,
  death,
  child,
  ...coursePatients,
  ...toldPatients,
  ...clinicalPatients,
  ...reviewPatients,
  ...fluidPatients,
  ...alarmPatients,
  ...visitPatients,
  ...callPatients,
  ...anchorPatients,
];
const frozenBefore = new Set(
  frozenReleases().flatMap((earlier) => frozenEvents(earlier).patients.map(({ name }) => name)),
);

/** What no earlier release froze; a patient whose payloads have a new version since needs a new name. */
const events: FrozenEvents = {
  protocol: exampleProtocol,
  calendar: calendar("2026-03-23..2026-03-27", "2026-07-06"),
  patients: patients.filter(({ name }) => !frozenBefore.has(name)),
};

const [release] = process.argv.slice(2);
if (release === undefined || !/^\d+\.\d+\.\d+$/.test(release))
  throw new Error("Name the release, like 0.1.0.");
freeze(release, events);
console.log(`Frozen: tests/frozen/${release}.events.json and .expected.json`);
