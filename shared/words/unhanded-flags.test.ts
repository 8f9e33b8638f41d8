import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { type UnhandedFlag, unhandedLine } from "./unhanded-flags.ts";

const today = day("2026-11-06");
const fever: UnhandedFlag = {
  flagId: "flag-1",
  patientId: "patient-1",
  familyName: "Brackenfold",
  givenName: "Ottoline",
  level: "same day",
  says: "fever",
  on: today,
  time: "14:05",
};

/** Common practice, no source: what nobody has is said until somebody has it. */
describe("red flags that nobody has, under the head of every page", () => {
  it.each<[string, readonly UnhandedFlag[], string | null]>([
    ["none: no line", [], null],
    ["today", [fever], "Red flag handed to nobody: Brackenfold, Ottoline, fever, since 14:05"],
    [
      "no clock time",
      [{ ...fever, time: null }],
      "Red flag handed to nobody: Brackenfold, Ottoline, fever, since today",
    ],
    [
      "another day, one name",
      [{ ...fever, givenName: "", on: day("2026-11-05") }],
      "Red flag handed to nobody: Brackenfold, fever, since Thu 5 Nov 2026, 14:05",
    ],
    [
      "a day that nobody knows",
      [{ ...fever, on: null, time: null }],
      "Red flag handed to nobody: Brackenfold, Ottoline, fever, since an unknown day",
    ],
    [
      "several: how many, and the oldest",
      [fever, { ...fever, flagId: "flag-2", says: "dry" }],
      "2 red flags handed to nobody, the oldest: Brackenfold, Ottoline, fever, since 14:05",
    ],
  ])("%s", (_, flags, line) => expect(unhandedLine(flags, today)).toBe(line));
});
