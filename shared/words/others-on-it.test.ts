import { expect, it } from "vitest";
import { instant, zone } from "#shared/day/instant.ts";
import { at } from "#tests/factories/reading.ts";
import { agoWords, decidedSentence, openedSentence } from "./others-on-it.ts";

const looking = { now: at("2026-11-06T10:16:30Z"), zone: zone("UTC") };
const before = (seconds: number) => instant(looking.now - seconds * 1000);

it.each([
  [59, "just now"],
  [60, "a minute ago"],
  [119, "a minute ago"],
  [120, "2 minutes ago"],
  [59 * 60, "59 minutes ago"],
  [60 * 60, "at 09:16"],
  [11 * 3600, "on Thu 5 Nov 2026, 23:16"],
])("%i s before: %s", (seconds, words) => {
  expect(agoWords(before(seconds), looking)).toBe(words);
});

it("says who, what and when", () => {
  expect(openedSentence("Petra Physick", before(250), looking)).toBe(
    "Petra Physick opened this review 4 minutes ago.",
  );
  expect(decidedSentence("Petra Physick", before(250), looking)).toBe("Petra Physick decided at 10:12.");
  expect(decidedSentence("Petra Physick", before(11 * 3600), looking)).toBe(
    "Petra Physick decided on Thu 5 Nov 2026, 23:16.",
  );
});
