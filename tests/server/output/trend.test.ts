import { describe, expect, it } from "vitest";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { recordReading } from "#server/output/record-reading.ts";
import { viewIfUnchanged } from "#server/output/view-if-unchanged.ts";
import { viewOutput } from "#server/output/view-output.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { addDays, day } from "#shared/day/day.ts";
import { people } from "#tests/support/database.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";

const about = { lastSeen: 0, patientId: "patient-1" };

/** A tube with a reading for each day from 1 June 2026 on. */
function measured(kind: string, drained: readonly number[]): { db: Database & Disposable; tubeId: string } {
  const db = clinicWithPatient();
  const texts = { kind, size: "8 f", when: "31 may 2026 10:00", flushOrder: "none", plan: "" };
  const tubeId =
    recordEvent({ db, staff: people.nurse }, "placed", { ...about, actId: newId(), texts }).tubeId ?? "";
  for (const [index, ml] of drained.entries()) {
    const on = addDays(day("2026-06-01"), index);
    const texts = {
      from: `${on} 00:00`,
      to: `${addDays(on, 1)} 00:00`,
      drained: `${ml}`,
      flushGiven: "none",
    };
    recordReading({ db, staff: people.caller }, { ...about, actId: newId(), tubeId, texts });
  }
  return { db, tubeId };
}

describe("what stands behind an output", () => {
  it("goes with the output page, without the dates if unchanged", () => {
    const { db, tubeId } = measured("abscess drain", [120, 112, 101, 96, 84, 80, 69]);
    using _closing = db;
    const { trend } = viewOutput(db, tubeId);
    expect(trend).toMatchObject({ kind: "told", median: 96, line: { slope: -8 }, kendall: { s: -21 } });
    expect(trend).not.toHaveProperty("ifUnchanged");
  });

  it("tells its dates apart: of readings long past none", () => {
    const { db, tubeId } = measured("abscess drain", [120, 112, 101, 96, 84, 80, 69]);
    using _closing = db;
    expect(viewIfUnchanged(db, tubeId)).toEqual({ kind: "none", because: "days-too-old" });
  });

  it("has no dates where no row asks for low output, and none where nothing is told", () => {
    const nephrostomy = measured("pcn l", [1200, 1180, 1150, 1100, 1090]);
    using _closing = nephrostomy.db;
    expect(viewIfUnchanged(nephrostomy.db, nephrostomy.tubeId)).toEqual({ kind: "none", because: "no-row" });
    const silent = measured("abscess drain", []);
    using _too = silent.db;
    expect(viewIfUnchanged(silent.db, silent.tubeId)).toBeNull();
  });
});
