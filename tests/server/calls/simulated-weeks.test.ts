import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { seeded } from "#seed-demo/seeded.ts";
import { callList } from "#server/calls/call-list.ts";
import { figures } from "#server/figures/figures.ts";
import { ringingKinds } from "#shared/call/call-line.ts";
import { nextOpenDay } from "#shared/day/clinic-days.ts";
import { addDays, type Day, day } from "#shared/day/day.ts";
import { zone } from "#shared/day/instant.ts";
import { testDatabase } from "#tests/support/database.ts";
import { calendar } from "#tests/support/factories.ts";
import { addInventedPatient } from "#tests/support/patient.ts";
import { fateOf } from "#tests/support/simulated/fate.ts";
import { instantOfMoment } from "#tests/support/simulated/kept-record.ts";
import { figuresCounted } from "#tests/support/simulated/own-count.ts";
import { ladder, SimulatedPatient } from "#tests/support/simulated/simulated-patient.ts";
import { StoredRecord } from "#tests/support/simulated/stored-record.ts";
import { Watch } from "#tests/support/simulated/watch.ts";

/** As the year in memory, by the example rows (common practice, no source): through the use cases, as the screens go through them. */
const SEED = 20_130_407;

describe("a clinic of 60 patients runs seven weeks in the use cases", () => {
  beforeEach(() => vi.useFakeTimers({ toFake: ["Date"] }));
  afterEach(() => vi.useRealTimers());

  /** Monday; London's clock is that of UTC until the end. */
  const FROM = day("2026-02-02");
  const DAYS = 49;
  const closure = { from: day("2026-02-23"), to: day("2026-02-24"), reason: "closed" };
  const closed = calendar("2026-02-23..2026-02-24");

  /** By what stands and what the simulation did: whatever came up before the last try waits for the next, or for a physician's day. */
  function isRung({ kept, lastTry, putOff }: SimulatedPatient, on: Day): boolean {
    const again = putOff === null ? null : (nextOpenDay(putOff.until, closed) ?? putOff.until);
    return kept.steps().some(({ kind, dueOn }) => {
      if (!ringingKinds.includes(kind) || dueOn > on) return false;
      if (kind === "red flag" || ladder.includes(kind)) return true;
      if (lastTry !== null) return dueOn > lastTry;
      return putOff === null || dueOn > putOff.on || (again !== null && on >= again);
    });
  }

  function clinic() {
    const db = testDatabase({ isDemo: false, closures: [closure] });
    const draw = seeded(SEED);
    const watch = new Watch(closed);
    const patients = Array.from({ length: 60 }, (_one, n) => {
      addInventedPatient(db, `patient-${n}`, String(1000 + n));
      const kept = new StoredRecord(db, `patient-${n}`);
      const fate = fateOf(draw, { from: FROM, days: 21 });
      return new SimulatedPatient(kept, fate, { draw, calendar: closed, seen: watch.seen });
    });
    return { db, watch, patients };
  }

  it("the list holds everybody who is due and nobody else, day after day, and the figures are the simulation's own", () => {
    const { db, watch, patients } = clinic();
    using _closed = db;
    const listed: number[] = [];
    for (let on = FROM; on < addDays(FROM, DAYS); on = addDays(on, 1)) {
      vi.setSystemTime(instantOfMoment({ on, minute: 8 * 60 }, zone("Europe/London")));
      const found = [1, 2].flatMap((page) => callList(db, { which: "due", page }).lines);
      const due = patients.flatMap((patient, n) => (isRung(patient, on) ? [`patient-${n}`] : []));
      expect([on, found.map(({ patient }) => patient.id).toSorted()]).toEqual([on, due.toSorted()]);
      listed.push(due.length);
      for (const patient of patients) if (patient.nextDay(addDays(on, -1)) === on) patient.live(on);
    }
    const counts = patients.map(({ count }) => count);
    expect(watch.broken).toEqual([]);
    expect(Math.max(...listed)).toBeGreaterThan(10);
    expect(figures(db, { days: 90 })).toMatchObject(figuresCounted(counts));
    expect(counts.flatMap(({ rounds }) => rounds).length).toBeGreaterThan(60);
    // How fast a machine is, no test asks.
  }, 300_000);
});
