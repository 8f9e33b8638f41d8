import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { onDay } from "#shared/day/when.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { prerequisiteThings } from "#shared/visit/prerequisite-things.ts";
import { type Known, onRecord } from "./on-record.ts";

const known = (said: Partial<Known> = {}): Known => ({
  conditions: {},
  clinical: {},
  contact: { language: "", needsInterpreter: null },
  ...said,
});
const at = { when: onDay(day("2026-10-30")), time: null, eventId: "e1", recordedOn: day("2026-10-30") };

describe("what is on record of a thing that is to be settled", () => {
  it.each([
    ["allergies", known(), "nothing on record"],
    ["allergies", known({ conditions: { allergies: unknownFact } }), "on record: allergies unknown"],
    ["allergies", known({ conditions: { allergies: confirmed("contrast") } }), "on record: contrast"],
    [
      "blood thinners",
      known({
        conditions: { bloodThinners: confirmed("warfarin"), bloodThinnerReason: confirmed("a valve") },
      }),
      "on record: warfarin, for a valve",
    ],
    ["blood thinners", known(), "nothing on record"],
    ["pregnancy test", known({ conditions: { pregnancy: confirmed(false) } }), "on record: pregnancy no"],
    [
      "dialysis or chemotherapy",
      known({ conditions: { chemotherapy: confirmed(true) } }),
      "on record: chemotherapy yes",
    ],
    ["isolation", known({ conditions: { isolation: confirmed("contact") } }), "on record: contact"],
    ["interpreter", known(), "nobody has asked whether one is needed"],
    [
      "interpreter",
      known({ contact: { language: "Welsh", needsInterpreter: true } }),
      "on record: needed, speaks Welsh",
    ],
    ["interpreter", known({ contact: { language: "", needsInterpreter: false } }), "on record: not needed"],
    ["antibiotic cover", known(), "nothing on record; no culture on record"],
    [
      "antibiotic cover",
      known({
        clinical: {
          antibioticsUntil: { ...at, fact: confirmed(day("2026-11-06")) },
          culture: { ...at, fact: confirmed("awaited") },
        },
      }),
      "on record: until Fri 6 Nov 2026; last culture Fri 30 Oct 2026: awaited",
    ],
    ["labs", known(), null],
  ] as const)("%s", (thing, of, says) => {
    expect(onRecord(thing, of)).toBe(says);
  });

  it("never says that a thing is settled", () => {
    for (const thing of prerequisiteThings) expect(onRecord(thing, known()) ?? "").not.toContain("settled");
  });
});
