import { describe, expect, it } from "vitest";
import { zone } from "#shared/day/instant.ts";
import type { ChartFacts, ChartReading } from "#shared/output/chart/chart-facts.ts";
import { millilitres } from "#shared/output/microlitre.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { at } from "#tests/factories/reading.ts";
import {
  changeWords,
  characterLetters,
  chartAspirateLine,
  chartReadingLines,
  chartSummary,
  lastReadingWords,
  letterKey,
  lettersOf,
  limitLabel,
  limitWords,
  recentSummary,
} from "./chart.ts";

const utc = zone("UTC");
const reading = (rest: Partial<ChartReading> = {}): ChartReading => ({
  id: "r",
  from: at("2026-11-02T08:00Z"),
  to: at("2026-11-03T08:00Z"),
  drained: millilitres(25),
  net: millilitres(17),
  because: [],
  characters: ["purulent", "debris"],
  ...rest,
});
const facts = (rest: Partial<ChartFacts> = {}): ChartFacts => ({
  zone: utc,
  span: { from: at("2026-11-02T08:00Z"), to: at("2026-11-05T12:00Z") },
  readings: [reading()],
  aspirates: [],
  unplaced: 0,
  changes: [],
  size: null,
  limit: null,
  band: null,
  ...rest,
});

describe("a bar, in words", () => {
  it("says its time, its net, and what came out", () => {
    expect(chartReadingLines(reading(), utc)).toEqual([
      "Mon 2 Nov 2026, 08:00 to Tue 3 Nov 2026, 08:00",
      "Net 17 mL, 17 mL/24 h.",
      "25 mL came out, 8 mL of it flush; purulent, debris.",
    ]);
  });

  it("says why its net cannot be told, and that a volume is unknown", () => {
    const [, why, out] = chartReadingLines(
      reading({ net: null, drained: null, because: ["volume-unknown"], characters: [] }),
      utc,
    );
    expect(why).toBe("A volume of this day is unknown.");
    expect(out).toBe("Volume unknown.");
    const untold = reading({ net: null, because: ["flush-not-recorded"], characters: [] });
    expect(chartReadingLines(untold, utc)[2]).toBe("25 mL came out.");
  });

  it("says what was drawn off at the procedure", () => {
    const aspirate = { id: "a", at: at("2026-11-02T08:30Z"), ul: millilitres(600) };
    expect(chartAspirateLine(aspirate, utc)).toBe(
      "Mon 2 Nov 2026, 08:30: 600 mL drawn off at the procedure. No output.",
    );
    expect(chartAspirateLine({ ...aspirate, ul: null }, utc)).toContain("an unknown volume drawn off");
  });
});

describe("letters", () => {
  it("are another for each look", () => {
    const letters = Object.values(characterLetters);
    expect(new Set(letters).size).toBe(letters.length);
  });

  it("are spelled out once each", () => {
    expect(lettersOf(["purulent", "debris"])).toBe("P D");
    expect(letterKey([reading(), reading({ characters: ["serous", "debris"] })])).toBe(
      "P purulent, D debris, S serous",
    );
  });
});

describe("what stands beside the bars, in words", () => {
  it("is the limit by what it means", () => {
    expect(limitWords({ means: "low day", underMl: 10 })).toBe("row: low day under 10 mL/24 h");
    expect(limitLabel({ means: "low day", underMl: 10 })).toBe("row: low day under 10");
    expect(limitWords({ means: "alarm", underMl: 100 })).toBe("row: alarm under 100 mL/24 h");
  });

  it("is what changed; the size where the last renewal changed it and it is known", () => {
    const up = { at: at("2026-11-03T12:00Z"), kind: "upsized" } as const;
    const capped = { at: at("2026-11-04T12:00Z"), kind: "capped" } as const;
    const chart = facts({ changes: [up, capped], size: lengthOf(12, "F") });
    expect(changeWords(up, chart)).toBe("12 F from 3 Nov");
    expect(changeWords(capped, chart)).toBe("capped 4 Nov");
    expect(changeWords(up, { ...chart, size: null })).toBe("upsized 3 Nov");
    const exchanged = { at: at("2026-11-04T18:00Z"), kind: "exchanged" } as const;
    const later = { ...chart, changes: [up, exchanged] };
    expect(changeWords(up, later)).toBe("upsized 3 Nov");
    expect(changeWords(exchanged, later)).toBe("exchanged 4 Nov");
  });

  it("is one line for the whole", () => {
    expect(
      chartSummary(
        facts({
          limit: { means: "low day", underMl: 10 },
          aspirates: [{ id: "a", at: at("2026-11-02T08:30Z"), ul: null }],
        }),
      ),
    ).toBe(
      "1 reading up to Thu 5 Nov 2026, 12:00; net 17 mL/24 h to 17 mL/24 h; what was drawn off at the procedure told apart; row: low day under 10 mL/24 h",
    );
    const untold = reading({ net: null });
    expect(chartSummary(facts({ readings: [untold, untold] }))).toBe(
      "2 readings up to Thu 5 Nov 2026, 12:00; no net known",
    );
    expect(chartSummary(facts({ span: null }))).toBe("No reading yet.");
  });
});

describe("a small chart, in words", () => {
  const frame = { from: at("2026-11-01T00:00Z"), to: at("2026-11-05T12:00Z"), top: 20, bottom: 0, step: 5 };

  it("says what its days hold and the row, and nothing of the days before", () => {
    const before = reading({
      id: "old",
      from: at("2026-10-20T08:00Z"),
      to: at("2026-10-21T08:00Z"),
      net: millilitres(90),
    });
    const limit = { means: "low day", underMl: 10 } as const;
    expect(recentSummary(facts({ readings: [before, reading()], limit }), frame)).toBe(
      "1 reading up to Thu 5 Nov 2026, 12:00; net 17 mL/24 h to 17 mL/24 h; row: low day under 10 mL/24 h",
    );
    expect(recentSummary(facts({ readings: [before] }), frame)).toBe("no reading in 14 days");
  });

  it("is followed by what was logged last, with its day", () => {
    expect(lastReadingWords(facts())).toBe("last: 17 mL/24 h, 3 Nov");
    const later = reading({
      from: at("2026-11-03T08:00Z"),
      to: at("2026-11-03T20:00Z"),
      net: millilitres(4),
    });
    expect(lastReadingWords(facts({ readings: [reading(), later] }))).toBe("last: 8 mL/24 h, 3 Nov");
    expect(lastReadingWords(facts({ readings: [later, reading()] }))).toBe("last: 8 mL/24 h, 3 Nov");
  });

  it("scales no minutes up to a day, and says what cannot be told, what is missing, and what never was", () => {
    const soon = (to: string) => facts({ readings: [reading({ to: at(to), net: millilitres(5) })] });
    expect(lastReadingWords(soon("2026-11-02T08:59Z"))).toBe("last: 5 mL in under 1 h, 2 Nov");
    expect(lastReadingWords(soon("2026-11-02T09:00Z"))).toBe("last: 120 mL/24 h, 2 Nov");
    expect(lastReadingWords(facts({ readings: [reading({ net: null })] }))).toBe("last: cannot tell, 3 Nov");
    expect(lastReadingWords(facts({ readings: [] }))).toBe("no reading in 14 days");
    const without = facts({ span: null, readings: [], unplaced: 2 });
    expect(lastReadingWords(without)).toBe("2 readings without a place in time, not drawn");
    expect(chartSummary(without)).toBe("2 readings without a place in time, not drawn");
    expect(chartSummary(facts({ unplaced: 1 }))).toContain("; 1 reading without a place in time, not drawn");
    expect(lastReadingWords(facts({ span: null, readings: [] }))).toBe("no reading yet");
  });
});
