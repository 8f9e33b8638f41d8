import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { onDay } from "#shared/day/when.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { criterionWhen, daily, drain, low, state, utc, well } from "#tests/factories/criterion.ts";
import { F, upsized } from "#tests/support/factories.ts";
import {
  besideSentence,
  criterionSentence,
  reasonSentence,
  rowSentence,
  verdictSentence,
} from "./criterion.ts";

const plateau = (found: { readonly over: number; readonly covered: number }) =>
  ({
    code: "plateau",
    ...found,
    from: day("2026-11-09"),
    to: day("2026-11-15"),
    since: day("2026-11-14"),
    readings: [],
    overMl: 50,
    days: 5,
    ofLast: 7,
    source: "CP",
  }) as const;

describe("the criterion in words", () => {
  it("is never told without what it means", () => {
    const entries = [drain(), upsized({ on: "2026-11-14", size: F(12) }), well];
    expect(criterionSentence(criterionWhen({ entries, readings: low }), utc)).toBe(
      "Numeric part not met: upsized on Sat 14 Nov 2026, one complete day since. Meeting a number means only that: check patency, patient and imaging.",
    );
    expect(criterionSentence(criterionWhen({ readings: low }), utc)).toBe(
      "Numeric part met: Sun 15 Nov 2026 6 mL/24 h, under 10. Meeting a number means only that: check patency, patient and imaging.",
    );
  });

  it("says each further reason as a sentence", () => {
    const imaging = confirmed({ on: day("2026-11-12"), finding: "larger", words: null } as const);
    const { because } = criterionWhen({
      entries: [drain(), state({ imaging })],
      readings: daily("2026-11-15", [5]),
    });
    expect(because.map((reason) => reasonSentence(reason, utc))).toEqual([
      "Sat 14 Nov 2026: no entry.",
      "Imaging of Thu 12 Nov 2026: collection larger.",
    ]);
  });

  it("says kind and role where no volume counts", () => {
    const of = (kind: "nephrostomy" | "gastrojejunostomy") =>
      verdictSentence(criterionWhen({ entries: [drain({ kind })] }), utc);
    expect(of("nephrostomy")).toBe("Does not apply: this kind never by volume (drains an organ).");
    expect(of("gastrojejunostomy")).toBe("Does not apply: this kind never by volume (feeding).");
  });

  it("names the row with version and source, and EXAMPLE until somebody approved it", () => {
    const { row } = criterionWhen({ readings: low });
    if (row === null) throw new Error("no row");
    expect(rowSentence(row)).toBe(
      "Row: net under 10 mL/24 h on 2 complete days running. Version 1, EXAMPLE, source 1; rest CP.",
    );
    expect(rowSentence({ ...row, approved: true, version: 3 })).toMatch(/Version 3, source/);
    expect(rowSentence({ ...row, what: "sessions", underMl: 50, running: 3 })).toMatch(
      /^Row: under 50 mL on 3 sessions running, no symptoms\./,
    );
    expect(rowSentence({ ...row, what: "chest tube", noAirLeakHours: 24, underMl: 100 })).toMatch(
      /^Row: no air leak for 24 h, under 100 mL\/24 h, lung up on film\./,
    );
  });

  it.each([
    [
      { code: "cavity-sum", tubes: [1, 2] } as const,
      "The sum of 2 tubes of one cavity (tube 1 and tube 2); a day counts where it is complete for each.",
    ],
    [{ code: "cavity-shut", tubes: [2] } as const, "Shut in the same cavity, and not in the sum: tube 2."],
    [
      { code: "tract-too-young", until: day("2026-11-22"), days: 21 } as const,
      "Another row: not removed before a tract age of 21 days, on Sun 22 Nov 2026.",
    ],
    [
      { code: "tract-age-unknown", days: 21 } as const,
      "Another row: not removed before a tract age of 21 days, and the age is not known.",
    ],
    [
      plateau({ over: 6, covered: 7 }),
      "Plateau: over 50 mL/24 h on 6 of the last 7 covered days, Mon 9 Nov 2026 to Sun 15 Nov 2026 (row: on 5 of the last 7; source CP).",
    ],
    [
      plateau({ over: 5, covered: 5 }),
      "Plateau: over 50 mL/24 h on each of the last 5 covered days, Mon 9 Nov 2026 to Sun 15 Nov 2026 (row: on 5 of the last 7; source CP).",
    ],
    [{ code: "readings-not-placed", count: 1 } as const, "One reading counts in no day: correct its time."],
    [{ code: "readings-not-placed", count: 8 } as const, "8 readings count in no day: correct their times."],
  ])("beside: %j", (reason, sentence) => {
    expect(besideSentence(reason)).toBe(sentence);
  });

  it.each([
    [
      { code: "too-few-days", since: null, tube: null, count: 1, needed: 2 } as const,
      "One complete day of 2.",
    ],
    [
      {
        code: "too-few-sessions",
        since: { what: "placed", when: onDay(day("2026-11-14")) },
        tube: 2,
        count: 9,
        needed: 12,
      } as const,
      "Tube 2 placed on Sat 14 Nov 2026, 9 sessions since.",
    ],
    [{ code: "no-row", of: "for a child" } as const, "No row: the table is for adults, ask."],
  ])("reason %j", (reason, sentence) => {
    expect(reasonSentence(reason, utc)).toBe(sentence);
  });
});
