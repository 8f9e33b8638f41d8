import { describe, expect, it } from "vitest";
import { exampleOutputRows } from "#shared/protocol/example-output.ts";
import { alarmInput, wholeDays } from "#tests/factories/alarm-input.ts";
import { capped, placed } from "#tests/support/factories.ts";
import { alarmReasons } from "./alarm-reasons.ts";
import { evidenceOf, fullDays } from "./evidence.ts";
import { plateauOf } from "./plateau.ts";

const drain = placed({ kind: "abscess drain", side: "not sided" });
const seen = (volumes: readonly (number | null)[], entries = [drain]) => {
  const evidence = evidenceOf(alarmInput(wholeDays(volumes), { entries }), exampleOutputRows);
  return plateauOf(evidence, fullDays(evidence))?.on ?? null;
};

describe("plateau (example table: over 50 mL/24 h on 5 of the last 7 covered days, CP)", () => {
  it.each([
    [[51, 51, 51, 51, 50], null],
    [[51, 51, 51, 51, 51], "2026-11-05"],
    [[51, 51, 51, 51, 20, 20, 51], "2026-11-07"],
    [[51, 51, 51, 51, 20, 20, 20], null],
    [[51, 51, 51, 51, null, 51], "2026-11-06"],
    [[51, 20, 20, 20, 51, 51, 51, 51], null],
  ])("days of %j mL: %s", (volumes, on) => {
    expect(seen(volumes)).toBe(on);
  });

  it("is a reason to look and no alarm, of a collection that is open alone", () => {
    const week = [60, 60, 60, 60, 60, 60, 60];
    expect(alarmReasons(alarmInput(wholeDays(week), { entries: [drain] }))).toEqual([]);
    expect(seen(week, [placed()])).toBeNull();
    expect(seen(week, [drain, capped({ on: "2026-10-20" })])).toBeNull();
  });
});
