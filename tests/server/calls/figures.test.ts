import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { figuresFile } from "#server/export/csv/figures-table.ts";
import { behindFigure, figures } from "#server/figures/figures.ts";
import { tableCount } from "#shared/words/figures.ts";
import { flagDone, flagHanded, flagRaised, rang } from "#tests/support/call-factories.ts";
import { placed } from "#tests/support/factories.ts";
import { addInventedPatient, clinicWithPatient, recordAs } from "#tests/support/patient.ts";
import { command } from "#tests/support/told.ts";

/** Monday 24 August 2026. */
beforeEach(() => vi.useFakeTimers({ toFake: ["Date"], now: new Date("2026-08-24T08:00:00Z") }));
afterEach(() => vi.useRealTimers());

function clinic() {
  const db = clinicWithPatient();
  addInventedPatient(db, "patient-2", "000418");
  recordAs(db, [{ ...command(placed()), eventId: "p1" }]);
  recordAs(db, [{ ...command(placed({ tube: "tube-2" })), eventId: "p2" }], "patient-2");
  recordAs(db, [{ ...command(rang({ outcome: "reached the patient" })), eventId: "r1" }]);
  recordAs(db, [{ ...command(rang()), eventId: "r2" }], "patient-2");
  recordAs(db, [{ ...command(flagRaised()), eventId: "flag-1" }]);
  recordAs(db, [{ ...command(flagHanded({ at: "10:30" })), eventId: "h1" }]);
  recordAs(db, [{ ...command(flagDone({ at: "12:00" })), eventId: "d1" }]);
  return db;
}

describe("the lead's figures", () => {
  it("are of what the clinic entered, and each opens whoever is behind it", () => {
    using db = clinic();
    expect(figures(db, { days: 30 })).toMatchObject({
      inPlace: [{ kind: "nephrostomy", tubes: 2 }],
      reached: { "first attempt": 1 },
      trying: 1,
      flags: { raised: 1, toHanded: { median: 0.5 }, toDone: { median: 2 } },
      pastLatest: 0,
    });
    const view = figures(db, { days: 30 });
    const tables = ["In place", "Reached", "Red flags", "Records ended"] as const;
    expect(tables.map((table) => tableCount(table, view))).toEqual([
      "2 tubes",
      "1 call that came to an end",
      "1 raised",
      "0 records",
    ]);
    expect(behindFigure(db, { days: 30, figure: "trying" })).toMatchObject([
      { patient: { number: "000418" } },
    ]);
    expect(behindFigure(db, { days: 30, figure: "reached first attempt" })).toMatchObject([
      { patient: { number: "000417" }, on: "2026-08-17" },
    ]);
    expect(behindFigure(db, { days: 30, figure: "ended died" })).toEqual([]);
  });

  it("are a file that names nobody", () => {
    using db = clinic();
    const { name, text } = figuresFile(db, { days: 30 });
    expect(name).toBe("figures-2026-07-26-to-2026-08-24.csv");
    expect(text).toContain("Reached,Reached at the first attempt,1,calls");
    expect(text).not.toContain("Brackenfold");
  });
});
