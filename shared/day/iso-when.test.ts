import { expect, it } from "vitest";
import { instant, zone } from "#shared/day/instant.ts";
import { isoWhen } from "#shared/day/iso-when.ts";
import { readWhenAt } from "#shared/day/read-when-at.ts";

const moment = { now: instant(Date.parse("2026-11-06T15:30:00Z")), zone: zone("Europe/London") };

it.each([
  ["14 aug 2026", "2026-08-14"],
  ["~14 aug 2026", "~2026-08-14"],
  ["in march 2026", "2026-03"],
  ["2025", "2025"],
  ["28 dec 2025 to 3 jan 2026", "2025-12-28 to 2026-01-03"],
  ["?", "unknown"],
])("%j in figures is %j, and reads back", (typed, text) => {
  const read = readWhenAt(typed, moment);
  if (!read.ok) throw new Error(read.refusal.code);
  expect(isoWhen(read.value.when)).toBe(text);
  expect(readWhenAt(text, moment)).toEqual(read);
});
