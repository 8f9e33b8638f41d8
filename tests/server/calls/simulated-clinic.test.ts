import { beforeAll, describe, expect, it } from "vitest";
import { type Draw, seeded } from "#seed-demo/seeded.ts";
import { figuresOf } from "#shared/call/figures.ts";
import { addDays, day } from "#shared/day/day.ts";
import { zone } from "#shared/day/instant.ts";
import { books, calendar } from "#tests/support/factories.ts";
import { fateOf } from "#tests/support/simulated/fate.ts";
import { RecordInMemory } from "#tests/support/simulated/kept-record.ts";
import { CHANCE, REACHED_IN_FOUR } from "#tests/support/simulated/make-call.ts";
import { figuresCounted } from "#tests/support/simulated/own-count.ts";
import { ladder, SimulatedPatient } from "#tests/support/simulated/simulated-patient.ts";
import { Watch } from "#tests/support/simulated/watch.ts";

/**
 * The follow-up list loses nobody, by the example rows (common practice, no source), at the published reach: see CHANCE. Closed days are
 * invented; everything that a patient's fate says is.
 */
const SEED = 20_130_407;

describe("a clinic of 2,000 patients runs a year", () => {
  const PATIENTS = 2000;
  const FROM = day("2026-01-05");
  const UNTIL = addDays(FROM, 364);
  const closed = calendar("2026-04-03..2026-04-06", "2026-12-25..2027-01-01");
  const tables = books({ calendar: () => closed });

  /** Day by day only where something happens or is asked: what stands in between is what stood before. */
  function live(patient: SimulatedPatient): void {
    let on = patient.nextDay(addDays(FROM, -1));
    for (; on !== null && on <= UNTIL; on = patient.nextDay(on)) patient.live(on);
  }

  function clinicOfAYear(draw: Draw) {
    const watch = new Watch(closed);
    const patients = Array.from({ length: PATIENTS }, () => {
      const kept = new RecordInMemory(tables);
      const fate = fateOf(draw, { from: FROM, days: 365 });
      const patient = new SimulatedPatient(kept, fate, { draw, calendar: closed, seen: watch.seen });
      live(patient);
      return patient;
    });
    return { watch, patients };
  }

  let lived: ReturnType<typeof clinicOfAYear>;
  // How fast a machine is, no test asks.
  beforeAll(() => {
    lived = clinicOfAYear(seeded(SEED));
  }, 300_000);
  const counts = () => lived.patients.map(({ count }) => count);

  it("nobody falls off, nobody is rung at night or on a closed day but in a trial, and nothing is tried more than three times running", () => {
    expect(lived.watch.broken).toEqual([]);
    expect(lived.watch.typed).toBeGreaterThan(10 * PATIENTS);
  });

  it("and every rung was climbed, on closed days too where a trial runs, so that no law stood untried", () => {
    expect([...lived.watch.came.keys()].toSorted()).toEqual([...ladder].toSorted());
    expect(Math.min(...lived.watch.came.values())).toBeGreaterThan(PATIENTS / 4);
    expect(lived.watch.inTrialsOnClosedDays).toBeGreaterThan(0);
    expect(lived.watch.alike).toBe(3);
  });

  it("the lead's figures equal the simulation's own count", () => {
    const states = lived.patients.map(({ kept }) => kept.state());
    expect(figuresOf(states, { from: FROM, to: UNTIL }, zone("UTC"))).toEqual(figuresCounted(counts()));
    expect(counts().reduce((sum, { flags }) => sum + flags.size, 0)).toBeGreaterThan(100);
  });

  it("as many are reached as the published chance gives in three attempts, and whoever was not is carried on", () => {
    // Four attempts reach 70 %; the example's row asks for three, which reach 1 - 0.740^3 = 0.595.
    expect(1 - (1 - CHANCE) ** 4).toBeCloseTo(REACHED_IN_FOUR, 10);
    const rounds = counts().flatMap((count) => count.rounds);
    const within = rounds.filter(({ way }) => /^(first|second|third) attempt$/.test(way)).length;
    expect(Math.abs(within / rounds.length - (1 - (1 - CHANCE) ** 3))).toBeLessThan(0.02);
    const others = rounds.filter(({ way }) => way === "another way" || way === "not reached").length;
    expect(others / rounds.length).toBeGreaterThan(0.25);
    const trying = lived.patients.filter(({ count }) => count.tried > 0);
    for (const { kept } of trying)
      if (kept.state().tubes.some(({ status }) => status !== "ended"))
        expect(kept.steps().some(({ kind }) => ladder.includes(kind))).toBe(true);
  });

  it("a death that is taken back leaves what stood before, with its steps; while it stood nothing was asked", () => {
    const undone = lived.patients.flatMap((patient) => patient.undone);
    expect(undone.length).toBeGreaterThan(10);
    for (const { before, dead, after } of undone) {
      const { lastSeq: _before, ...stood } = before.state;
      const { lastSeq: _after, ...stands } = after.state;
      expect(stands).toEqual(stood);
      expect(after.steps).toEqual(before.steps);
      expect(dead).toEqual([]);
    }
  });
});
