import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { inventedClinic } from "#seed-demo/invented-clinic.ts";
import { joinedFrom } from "#seed-demo/stories/23-joined-from.ts";
import type { Story } from "#seed-demo/story.ts";
import { toldStories } from "#seed-demo/told-stories.ts";
import { addDays, day, weekdayOf } from "#shared/day/day.ts";

const startDay = day("2026-11-25");
const clinic = inventedClinic({ startDay, seed: 1 });
const told = toldStories(startDay);

/** Those that are drawn. */
const ordinary = (stories: readonly Story[]): readonly Story[] => stories.slice(told.length);

const families = (stories: readonly Story[]) => stories.map(({ patient }) => patient.familyName);

describe("the invented clinic", () => {
  it("is the same for the same start day and seed", () => {
    expect(inventedClinic({ startDay, seed: 1 })).toEqual(clinic);
  });

  it("draws other ordinary lives by another seed, and keeps the stories that were written", () => {
    const other = inventedClinic({ startDay, seed: 2 });
    expect(other.slice(0, told.length)).toEqual(told);
    expect(families(ordinary(other))).not.toEqual(families(ordinary(clinic)));
    expect(ordinary(other).map(({ acts }) => acts)).not.toEqual(ordinary(clinic).map(({ acts }) => acts));
  });

  it("begins before the start day, or on its morning", () => {
    for (const { acts } of clinic)
      for (const { daysAgo, at } of acts) {
        expect(daysAgo).toBeGreaterThanOrEqual(0);
        if (daysAgo === 0) expect(at < "09:30").toBe(true);
      }
  });

  it("tells every story that has a file", () => {
    expect(readdirSync("seed-demo/stories")).toHaveLength(told.length);
  });

  it.each([
    1, 2, 3, 5, 6, 7, 8, 9, 10, 11, 12, 13, 19, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 31, 32, 36, 40, 41,
  ])("has a story of hard case %i", (number) => {
    const begins = `${String(number).padStart(2, "0")}-`;
    expect(readdirSync("seed-demo/stories").filter((file) => file.startsWith(begins))).not.toEqual([]);
  });

  it("gives everybody a name and a number of their own, but the one who is told under two numbers", () => {
    const once = clinic.filter((story) => story !== joinedFrom);
    const names = once.map(({ patient }) => `${patient.familyName} ${patient.givenName}`);
    const numbers = clinic.map(({ patient }) => patient.number);
    expect(new Set(names).size).toBe(once.length);
    expect(new Set(numbers).size).toBe(clinic.length);
  });

  it("dials only numbers kept for fiction, none of them twice", () => {
    const typed = clinic.flatMap(({ patient }) => [patient.telephones, patient.alternateTelephone]);
    const dialed = typed.filter((text) => text !== undefined && text !== "").map((text) => text?.slice(0, 8));
    for (const number of dialed) expect(number).toMatch(/^555 01\d\d$/);
    expect(new Set(dialed).size).toBe(dialed.length);
  });

  it.each(Array.from({ length: 7 }, (_, days) => addDays(startDay, days)))(
    "begun on %s, places and exchanges the tubes of ordinary lives on weekdays",
    (begun) => {
      const acts = ordinary(inventedClinic({ startDay: begun, seed: 1 })).flatMap((story) => story.acts);
      const visits = acts.filter(({ form }) => ["placed", "exchanged", "removed", "checked"].includes(form));
      expect(visits.length).toBeGreaterThan(100);
      for (const { daysAgo } of visits) expect(weekdayOf(addDays(begun, -daysAgo))).toBeLessThan(6);
    },
  );
});
