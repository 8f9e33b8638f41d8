import { expect, it } from "vitest";
import { numberLines, openedLines } from "./call-paper.ts";
import { flagHolder } from "./closing-list.ts";

const contact = {
  telephones: [{ number: "555 0117", bestTimes: "after 5 pm" }],
  alternate: { name: "Ada Example", telephone: null, mayBeTold: null },
  homeNurse: null,
  referrer: "Dr Example, 555 0199",
  familyDoctor: null,
  responsibleService: null,
};

it("a number stands with whose it is, and whether they may be told", () => {
  expect(numberLines(contact)).toEqual([
    { number: "555 0117", whose: "the patient", best: "after 5 pm" },
    {
      number: "no number",
      whose: "Ada Example, alternate contact: nobody has asked whether they may be told",
      best: null,
    },
    { number: "Dr Example, 555 0199", whose: "referrer", best: null },
  ]);
  const told = (mayBeTold: boolean) =>
    numberLines({ ...contact, alternate: { ...contact.alternate, mayBeTold } })[1]?.whose;
  expect(told(false)).toContain("may not be told");
  expect(told(true)).toContain(": may be told");
});

const fever = { level: "same day", says: "38.0 C and over", untilReached: "reconnect to bag" } as const;

it("an answer stands with the level and the act that holds, also where something is not known of the patient", () => {
  expect(openedLines({ opensOn: "yes", flag: fever, ifSo: [] })).toEqual([
    "If yes: SAME DAY: 38.0 C and over. Until somebody is reached: reconnect to bag.",
  ]);
  const neutropenic = {
    level: "emergency services",
    says: "fever on chemotherapy",
    untilReached: null,
  } as const;
  expect(
    openedLines({ opensOn: "yes", flag: fever, ifSo: [{ of: "immune suppression", flag: neutropenic }] })[1],
  ).toBe(
    "If yes and immune suppression, which is not known here: ask. EMERGENCY SERVICES: fever on chemotherapy.",
  );
  expect(openedLines({ opensOn: null, flag: fever, ifSo: [] })).toEqual([]);
});

it("a red flag is somebody's by name and day, or nobody's", () => {
  const why = [
    { code: "flag-handed", args: { to: "Dr Example", day: "2026-08-24", at: "10:20" }, eventId: null },
  ] as const;
  expect(flagHolder({ why })).toBe(
    "Dr Example, since Mon 24 Aug 2026 at 10:20; what was done is not recorded",
  );
  expect(flagHolder({ why: [{ code: "flag-not-handed", args: {}, eventId: null }] })).toBeNull();
});
