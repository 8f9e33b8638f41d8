import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { millilitres } from "#shared/output/microlitre.ts";
import { openSteps } from "#shared/step/open-steps.ts";
import { carePayloads } from "#shared/tube/care-payloads.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { coursePayloads } from "#shared/tube/course-payloads.ts";
import { fold } from "#shared/tube/fold.ts";
import { anyHistory, anyLife } from "#tests/support/any-history.ts";
import * as make from "#tests/support/factories.ts";
import { books } from "#tests/support/told.ts";
import { storySentence } from "./events.ts";
import { stepAsksOf, stepStanding } from "./steps.ts";
import { whySentence } from "./why.ts";

const nameOf = (id: string) => `<${id}>`;
const fromThem = { certainty: "reported", value: true } as const;
const nurse = { role: "nurse", staffId: "staff-1" } as const;

const told: readonly (readonly [make.Entry, string])[] = [
  [make.downsized({ size: make.F(7) }), "Downsized: 7 F."],
  [make.repositioned({ seenHow: "under imaging" }), "Repositioned: external length unknown, under imaging."],
  [
    make.flushed({ given: confirmed(millilitres(10)), went: "hard", cameBack: unknownFact }),
    "Flushed: 10 mL, hard to flush, unknown whether it came back.",
  ],
  [make.flushed({ went: "not at all" }), "Flushed: volume unknown, did not go in, came back."],
  [make.fluidTested(), "Fluid tested: bilirubin 85 umol/L (serum 25 umol/L)."],
  [make.unblocked({ how: "a wire" }), "Unblocked: a wire."],
  [
    make.trialStarted({ covers: "the ward" }),
    "Clamp trial started: calls covered by the ward, unknown whether a bag is at home.",
  ],
  [make.trialPassed(), "Clamp trial passed: now capped."],
  [make.trialFailed({ note: "Pain." }), "Clamp trial failed: now to bag. Pain."],
  [make.suctionChanged({ pressure: "-20 cm water" }), "Suction changed: to suction, -20 cm water."],
  [make.balloonChecked({ found: confirmed(8) }), "Balloon water checked: found 8 mL, refilled to 10 mL."],
  [
    make.balloonChecked({ found: unknownFact }),
    "Balloon water checked: water found unknown, refilled to 10 mL.",
  ],
  [
    make.anchorsRemoved({ fixation: confirmed("disc") }),
    "Anchors or sutures removed: 2 anchors, fixed by disc.",
  ],
  [make.blocked({ toldBy: "the patient" }), "Blocked: told by the patient."],
  [make.leaking({ soaking: fromThem }), "Leaking: soaking (reported)."],
  [make.infected(), "Infected: no fever."],
  [make.bled({ heavy: unknownFact }), "Bled: unknown how much."],
  [make.broken({ fragmentInside: confirmed(true), part: "hub" }), "Broken: hub, a piece is left inside."],
  [
    make.removalDecided({ by: "2026-09-02", owner: nurse, reason: "Dry." }),
    "Removal decided: by Dr. Orla Invented, until Wed 2 Sep 2026, <staff-1>. Dry.",
  ],
  [make.handedOver(), "Handed over: to the urology service, not accepted yet."],
  [make.acceptedElsewhere({ how: "letter" }), "Care accepted elsewhere: by Dr. Orla Invented, letter."],
  [make.transferred({ findOut: ["size"] }), "Transferred: Far Dale General, to find out: size."],
  [
    make.hospiceDecided({ calls: "go on", team: "home hospice" }),
    "Hospice: decided by Dr. Orla Invented, calls go on, exchanges stop, until Thu 31 Dec 2026, with home hospice.",
  ],
  [make.whereaboutsNoted({ where: "ward 4" }), "Whereabouts: inpatient, ward 4."],
  [
    make.clinicalStateNoted({
      findings: {
        temperature: { certainty: "reported", value: { value: 38, asTyped: "100.4 F" } },
        chills: confirmed(false),
        feels: unknownFact,
        antibioticsUntil: confirmed(day("2026-11-11")),
        imaging: confirmed({ on: day("2026-11-04"), finding: "larger", words: "5 cm" }),
      },
      toldBy: "the ward",
      note: "Rang at night.",
    }),
    "Clinical state: temperature 38 °C, typed 100.4 F, shaking chills no, feels unknown, imaging Wed 4 Nov 2026, larger, 5 cm, antibiotics until Wed 11 Nov 2026, told by the ward. Rang at night.",
  ],
  [make.followUpEnded(), "Follow-up ended by decision: decided by Dr. Orla Invented. the piece stays."],
  [make.reportedOut(), "One of several reported out: tube 1 or tube 2, not known which, told by urology."],
  [make.recordsJoined(), "Joined with another record of the same person. the same telephone."],
  [
    make.recordsJoined({ numbers: [{ tube: "tube-9", number: 3 }] }),
    "Joined with another record of the same person: tubes of that record numbered anew: 3. the same telephone.",
  ],
  [make.reconcileAsked(), "Not agreed: sides. the report says right, the record left."],
  [
    make.reconciled({ sides: [{ tube: "tube-2", number: 2, side: confirmed("left") }] }),
    "Reconciled: sides, tube 2: left. films looked at.",
  ],
];

describe("the story of a tube's course", () => {
  it.each(told)("%#: %s", (entry, sentence) => {
    expect(storySentence(entry, nameOf)).toBe(sentence);
  });

  it("has an example of every kind of it", () => {
    const kinds = ["downsized", ...Object.keys(coursePayloads), ...Object.keys(carePayloads)];
    expect(new Set<string>(told.map(([{ kind }]) => kind))).toEqual(new Set(kinds));
  });
});

describe("what is said of open steps, of any history", () => {
  it("quotes no hole: each line and standing is made of words", () => {
    fc.assert(
      fc.property(fc.oneof(anyHistory, anyLife), (events) => {
        for (const step of openSteps(fold(events), books())) {
          const said = [...step.why.map(whySentence), stepStanding(step, day("2026-08-20"))];
          for (const words of said) expect(words).not.toMatch(/undefined|null|NaN|\[object/);
        }
      }),
    );
  });
});

describe("what a review asks", () => {
  it("hangs on the role: low output is a sign for removal of a collection only", () => {
    expect(stepAsksOf("review", "drains an organ")).toContain("Low output is no sign for removal.");
    expect(stepAsksOf("review", "air and fluid")).toContain("Air leak first");
    expect(stepAsksOf("review", "collection")).not.toContain("no sign");
    expect(stepAsksOf("exchange", "collection")).toBe(stepAsksOf("exchange", null));
  });
});
