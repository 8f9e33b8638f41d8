import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { patientsWithEvents } from "#db/queries/events.ts";
import { inventedClinic } from "#seed-demo/invented-clinic.ts";
import { inventedClosures, SHUT_FROM } from "#seed-demo/invented-closures.ts";
import { inventedRooms } from "#seed-demo/invented-rooms.ts";
import { seeded } from "#seed-demo/seeded.ts";
import { tellStories } from "#seed-demo/tell.ts";
import { today } from "#server/clock.ts";
import { todayList } from "#server/lists/today-list.ts";
import { booksOf } from "#server/record/books.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { addDays, day } from "#shared/day/day.ts";
import { type DayPart, dayParts } from "#shared/step/day-part.ts";
import { openSteps } from "#shared/step/open-steps.ts";
import { eventKinds } from "#shared/tube/event-kinds.ts";
import { fold } from "#shared/tube/fold.ts";
import { tubeKinds } from "#shared/tube/kind/kinds.ts";
import { testDatabase } from "#tests/support/database.ts";

/** Each weekday once; London's clocks went back on 25 October 2026 and go forward on 28 March 2027. */
const days = [
  ["Mon, a day after the clocks went back", "2026-10-26"],
  ["Tue 29 February", "2028-02-29"],
  ["Wed, in the week after the clocks went forward", "2027-03-31"],
  ["Thu 31 December", "2026-12-31"],
  ["Fri 1 January", "2027-01-01"],
  ["Sat, the eve of the clocks going forward", "2027-03-27"],
  ["Sun on which the clocks go forward", "2027-03-28"],
] as const;

const median = (counts: readonly number[]): number =>
  counts.toSorted((a, b) => a - b)[Math.floor((counts.length - 1) / 2)] ?? 0;

/** Told whole: an act that the app refuses would throw. */
function toldOn(startDay: string) {
  vi.useFakeTimers({ toFake: ["Date"], now: new Date(`${startDay}T09:30:00Z`) });
  const db = testDatabase({
    isDemo: true,
    closures: inventedClosures(day(startDay)),
    rooms: inventedRooms,
  });
  tellStories(
    { db, startDay: day(startDay), calls: seeded(20) },
    inventedClinic({ startDay: day(startDay), seed: 20 }),
  );
  const patients = patientsWithEvents(db).map((patientId) => {
    const { events } = loadRecord(db, patientId);
    const state = fold(events);
    return { events, state, steps: openSteps(state, booksOf(db, null)) };
  });
  const readings = db.sqlite
    .prepare<[], number>("select count(*) from readings group by tube_id")
    .pluck()
    .all();
  return { db, patients, readings };
}

describe.each(days)("the invented clinic begun on %s", (_name, startDay) => {
  let told: ReturnType<typeof toldOn>;
  // How fast a machine is, no test asks: the limit only ends what hangs.
  beforeAll(() => {
    told = toldOn(startDay);
  }, 240_000);
  afterAll(() => {
    told.db.sqlite.close();
    vi.useRealTimers();
  });

  const tubes = () => told.patients.flatMap(({ state }) => state.tubes);
  const open = () => tubes().filter(({ status }) => status !== "ended");

  it("hard case 24: a latest date in the two weeks of closure is pulled forward, and said so", () => {
    const moved = told.patients
      .flatMap(({ steps }) => steps)
      .flatMap(({ latest, why }) =>
        why.some(({ code, args }) => code === "moved" && args.end === "latest" && args.because === "closure")
          ? [latest]
          : [],
      );
    expect(moved.length).toBeGreaterThan(0);
    for (const latest of moved) expect(latest! < addDays(day(startDay), SHUT_FROM)).toBe(true);
  });

  it("sets the clock right again", () => {
    expect(today(told.db)).toBe(startDay);
  });

  it("has 60 patients and 90 open records, of every kind of tube", () => {
    expect(told.patients.length).toBeGreaterThanOrEqual(60);
    expect(open().length).toBeGreaterThanOrEqual(90);
    expect(new Set(open().map(({ kind }) => kind))).toEqual(new Set(tubeKinds));
  });

  it("holds every kind of entry", () => {
    const kinds = new Set(told.patients.flatMap(({ events }) => events.map(({ kind }) => kind)));
    // Dates are confirmed when newer rules proposed others, which a new clinic has none of; calls about one tube are of older records.
    const notTold: readonly string[] = ["dates confirmed", "called"];
    expect(kinds).toEqual(new Set(eventKinds.filter((kind) => !notTold.includes(kind))));
  });

  it("has seen enough of its tubes: five entries each by the median, ten emptyings of fifteen", () => {
    // A call is about all of a patient's tubes.
    const named = told.patients.flatMap(({ state, events }) =>
      state.tubes.map(
        ({ id }) =>
          events.filter(({ kind, tubes: of }) => of.includes(id) || kind === "call attempted").length,
      ),
    );
    expect(median(named)).toBeGreaterThanOrEqual(5);
    expect(told.readings.filter((count) => count >= 10).length).toBeGreaterThanOrEqual(15);
  });

  it("knows the day on which most clocks began", () => {
    const dated = open().filter(({ catheter }) => catheter.since.precision === "day");
    expect(dated.length / open().length).toBeGreaterThanOrEqual(0.8);
  });

  it("leaves no open record without a step, a date and an owner, and contradicts itself nowhere", () => {
    const steps = told.patients.flatMap((patient) => patient.steps);
    for (const { id } of open()) {
      const own = steps.filter(({ tubeId }) => tubeId === id);
      expect(own.length).toBeGreaterThan(0);
      for (const { dueOn, owner } of own) expect([dueOn, owner.role]).not.toContain(null);
    }
    expect(told.patients.flatMap(({ state }) => state.contradictions)).toEqual([]);
  });

  it("begins with a morning that somebody can work through", () => {
    const { parts } = todayList(told.db);
    const atLeastAndMost = {
      out: [3, 8],
      "past-latest": [2, 8],
      undated: [1, 6],
      visits: [0, 16],
      due: [4, 20],
      calls: [3, 20],
      "loose-ends": [5, 16],
    } satisfies Record<DayPart, [number, number]>;
    for (const part of dayParts) {
      const [least, most] = atLeastAndMost[part];
      expect(parts[part].total, part).toBeGreaterThanOrEqual(least);
      expect(parts[part].total, part).toBeLessThanOrEqual(most);
    }
  });
});
