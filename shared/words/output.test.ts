import { describe, expect, it } from "vitest";
import { instant, zone } from "#shared/day/instant.ts";
import { millilitres } from "#shared/output/microlitre.ts";
import type { MlPer24h } from "#shared/output/rate.ts";
import {
  doubtSentence,
  incompleteWords,
  lowDayWords,
  netSentence,
  printRate,
  printVolume,
  problemSentence,
  remarkWords,
  whatAlarmsOf,
} from "./output.ts";

it.each([
  [17, "17 mL"],
  [-10, "-10 mL"],
  [59.147, "59.1 mL"],
  [-0.04, "0 mL"],
  [0, "0 mL"],
])("%f mL is printed as %s", (ml, text) => {
  expect(printVolume(millilitres(ml))).toBe(text);
});

it("a rate is printed with its time", () => {
  expect(printRate(48 as MlPer24h)).toBe("48 mL/24 h");
});

describe("what one reading brings", () => {
  it("is its net, negative too", () => {
    expect(netSentence({ kind: "known", ul: millilitres(-10) })).toBe("Net -10 mL.");
  });

  it("cannot be told where flush is ordered and not written down", () => {
    expect(netSentence({ kind: "cannot tell", because: ["flush-not-recorded"] })).toBe(
      "Flush is ordered and nobody wrote down what was given: the net cannot be told.",
    );
  });
});

describe("sentences", () => {
  it("an overlap is told by the clock of the clinic", () => {
    const span = {
      from: instant(Date.parse("2026-11-04T01:00Z")),
      to: instant(Date.parse("2026-11-04T05:00Z")),
    };
    expect(
      problemSentence({ code: "overlap", readings: ["a", "b"], ...span }, zone("America/New_York")),
    ).toBe(
      "Two readings claim the time from Tue 3 Nov 2026, 20:00 to Wed 4 Nov 2026, 00:00. Correct one of them.",
    );
  });

  it("a doubt is a question", () => {
    const mlPer24h = 1000 as MlPer24h;
    expect(doubtSentence({ code: "far-over-median", mlPer24h, medianMlPer24h: 95 as MlPer24h })).toBe(
      "That is 1000 mL/24 h; this week's median is 95 mL/24 h. Is the volume right?",
    );
    expect(doubtSentence({ code: "more-than-row", mlPer24h, rowMlPer24h: 500 as MlPer24h })).toBe(
      "That is 1000 mL/24 h, over the clinic's row of 500 mL/24 h. Is the volume right?",
    );
  });

  it("none decides: each ends its thought and none says what this program never says", () => {
    const all = [
      ...Object.values(incompleteWords),
      ...Object.values(remarkWords),
      ...(["low", "not low"] as const).map((kind) => lowDayWords({ kind })),
      ...(["role", "mode"] as const).map((because) => lowDayWords({ kind: "does not apply", because })),
      lowDayWords({ kind: "cannot tell", because: ["gap"] }),
    ];
    for (const sentence of all) {
      expect(sentence).toMatch(/[.]$/);
      expect(sentence).not.toMatch(/\bsafe|recommend|normal|OK to remove/i);
    }
  });
});

it("says that a new fluid raises no alarm where nobody wrote down what is expected", () => {
  expect(whatAlarmsOf({ expectedFluid: ["clear"] })).toMatch(/read those yourself\.$/);
  expect(whatAlarmsOf({ expectedFluid: [] })).toMatch(
    /What it is expected to drain is not recorded, so no new fluid raises one: note it as a fact of the tube\.$/,
  );
});
