import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { projectionOf } from "#db/queries/projections.ts";
import { countOpenProposals } from "#db/queries/proposals.ts";
import { reads } from "#db/schema/reads.ts";
import type { Database } from "#db/sqlite.ts";
import { askCalendar, changeCalendar, restoreCalendar } from "#server/calendar/change-calendar.ts";
import { previewCalendar } from "#server/calendar/preview-change.ts";
import { calendarStory, viewCalendar } from "#server/calendar/view-calendar.ts";
import { confirmSeveral } from "#server/dates/confirm-dates.ts";
import { listProposals } from "#server/dates/list-proposals.ts";
import { newId } from "#server/ids.ts";
import { viewTube } from "#server/tubes/view-tube.ts";
import { calendarChanges } from "#shared/day/calendar-change.ts";
import { nextOpenDay } from "#shared/day/clinic-days.ts";
import { addDays, type Day, day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { CalendarAsked } from "#shared/record/calendar/asked.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people } from "#tests/support/database.ts";
import { placed } from "#tests/support/factories.ts";
import { addInventedPatient, clinicWithPatient, recordAs } from "#tests/support/patient.ts";
import { refusalsOf } from "#tests/support/refusal.ts";
import { command } from "#tests/support/told.ts";

const lead = (db: Database) => ({ db, staff: people.lead });

/** A nephrostomy and, of another patient, an abscess drain; placed so that their windows are still to come. */
function clinic(): { db: Database & Disposable; today: Day; latest: Day } {
  const db = clinicWithPatient();
  addInventedPatient(db, "patient-2", "000418");
  const { today } = viewCalendar(db);
  recordAs(db, [{ ...command(placed({ on: addDays(today, -20) })), eventId: newId() }]);
  const drain = placed({ on: addDays(today, -10), tube: "tube-2", kind: "abscess drain" });
  recordAs(db, [{ ...command(drain), eventId: newId() }], "patient-2");
  const latest = exchangeOf(db)[2] as Day;
  return { db, today, latest };
}

const exchangeOf = (db: Database) => {
  const step = viewTube(db, "tube-1").steps.find(({ kind }) => kind === "exchange");
  return [step?.earliest, step?.target, step?.latest, step?.pins.calendar];
};

const closing = (from: Day, to: Day, reason = "building work"): CalendarAsked => ({
  kind: "close",
  texts: { from: printDay(from), to: printDay(to), reason },
});
const ask = (db: Database, asked: CalendarAsked, seen = viewCalendar(db).calendar.version) =>
  askCalendar(lead(db), { actId: newId(), seen, asked });
const stepsOfAll = (db: Database) =>
  ["patient-1", "patient-2"].flatMap((id) =>
    projectionOf(db, id).steps.map(({ why: _why, ...step }) => step),
  );
/** The two weeks round the latest day of the nephrostomy's exchange. */
const twoWeeks = (latest: Day) => closing(addDays(latest, -6), addDays(latest, 7));

describe("closing the clinic for two weeks (hard case 24)", () => {
  it("is previewed for whom it touches, which writes nothing; closing then proposes just that, and the old dates stand", () => {
    const { db, latest } = clinic();
    using _ = db;
    const before = stepsOfAll(db);
    const asked = twoWeeks(latest);
    const preview = previewCalendar(db, { seen: 1, asked, page: 1 });
    expect(preview.tubes).toBeGreaterThan(0);
    expect(preview.waiting).toBe(0);
    expect(preview.changes).toMatchObject([{ code: "closed", closure: { reason: "building work" } }]);
    expect([countOpenProposals(db), viewCalendar(db).calendar.version]).toEqual([0, 1]);

    expect(ask(db, asked)).toEqual({ version: 2, changed: true, tubes: preview.tubes });
    const { lines, count } = listProposals(db, { page: 1 });
    expect(count).toBe(preview.steps);
    expect(lines.map(({ tube, step, stood, proposed }) => ({ tube, step, stood, proposed }))).toEqual(
      preview.lines.map(({ tube, step, stood, proposed }) => ({ tube, step, stood, proposed })),
    );
    expect(lines.every(({ cause }) => cause === "calendar 2")).toBe(true);
    expect(stepsOfAll(db)).toEqual(before);

    const half: CalendarAsked = {
      kind: "open half a day",
      texts: {
        on: printDay(nextOpenDay(addDays(latest, 8), viewCalendar(db).calendar) ?? latest),
        reason: "course",
      },
    };
    // A half day moves nothing; what the closure proposed still waits, is told, and is counted again.
    expect(previewCalendar(db, { seen: 2, asked: half, page: 1 })).toMatchObject({
      tubes: preview.tubes,
      waiting: preview.steps,
    });
  });

  it("pulls the latest day forward, before the closure, once a nurse confirms", () => {
    const { db, latest } = clinic();
    using _ = db;
    ask(db, twoWeeks(latest));
    const proposals = listProposals(db, { page: 1 }).lines.map(({ id }) => id);
    confirmSeveral({ db, staff: people.nurse }, { actId: newId(), proposals });
    const [, , moved, pinned] = exchangeOf(db);
    expect(pinned).toBe(2);
    expect((moved ?? "") < addDays(latest, -6)).toBe(true);
    expect(countOpenProposals(db)).toBe(0);
  });

  it("taken back, is a version of its own, and nothing is proposed any more", () => {
    const { db, latest } = clinic();
    using _ = db;
    ask(db, twoWeeks(latest));
    const actId = newId();
    const restoring = { actId, seen: 2, version: 1 };
    expect(restoreCalendar(lead(db), restoring)).toEqual({ version: 3, changed: true, tubes: 0 });
    expect(restoreCalendar(lead(db), restoring)).toEqual({ version: 3, changed: true, tubes: 0 });
    expect(viewCalendar(db).calendar).toMatchObject({ version: 3, closures: [] });
    expect(countOpenProposals(db)).toBe(0);
  });

  it("moved, is proposed anew: what it no longer touches is no longer proposed", () => {
    const { db, latest } = clinic();
    using _ = db;
    ask(db, twoWeeks(latest));
    expect(countOpenProposals(db)).toBeGreaterThan(0);
    const from = addDays(latest, 400);
    const texts = { from: printDay(from), to: "", reason: "building work" };
    expect(ask(db, { kind: "close", texts, moves: addDays(latest, -6) })).toMatchObject({ tubes: 0 });
    expect(countOpenProposals(db)).toBe(0);
    expect(viewCalendar(db).calendar.closures).toEqual([{ from, to: from, reason: "building work" }]);
  });
});

describe("a change of the calendar", () => {
  it("is refused where another version came meanwhile, and nothing of it is written", () => {
    const { db, today } = clinic();
    using _ = db;
    ask(db, closing(addDays(today, 30), addDays(today, 30)));
    const late = closing(addDays(today, 60), addDays(today, 60));
    for (const refused of [
      () => ask(db, late, 1),
      () => previewCalendar(db, { seen: 1, asked: late, page: 1 }),
      () => restoreCalendar(lead(db), { actId: newId(), seen: 1, version: 1 }),
      () => restoreCalendar(lead(db), { actId: newId(), seen: 2, version: 2 }),
    ])
      expect(refusalsOf(refused)).toMatchObject([{ code: "calendar-changed" }]);
    expect(viewCalendar(db).calendar).toMatchObject({ version: 2, closures: [{}] });
  });

  it("that changes nothing writes no version; the same act sent again changes nothing more", () => {
    const { db, today } = clinic();
    using _ = db;
    const same: CalendarAsked = { kind: "open weekdays", texts: { openWeekdays: "fri mon-thu" } };
    expect(ask(db, same)).toEqual({ version: 1, changed: false, tubes: 0 });
    const sent = { actId: newId(), seen: 1, asked: closing(addDays(today, 9), addDays(today, 9)) };
    expect(askCalendar(lead(db), sent)).toEqual(askCalendar(lead(db), sent));
    expect(viewCalendar(db).calendar.version).toBe(2);
  });

  it("is kept in order, whatever the order in which it was made", () => {
    const { db, today } = clinic();
    using _ = db;
    for (const away of [90, 30, 60]) ask(db, closing(addDays(today, away), addDays(today, away)));
    ask(db, { kind: "open weekdays", texts: { openWeekdays: "fri, mon" } });
    const { calendar } = viewCalendar(db);
    expect(calendar.closures.map(({ from }) => from)).toEqual(
      [30, 60, 90].map((away) => addDays(today, away)),
    );
    expect(calendar).toMatchObject({ version: 5, openWeekdays: [1, 5], halfDays: [] });
  });

  it("with nothing to mend writes one version, with something none, every refusal beside its field", () => {
    const { db } = clinic();
    using _ = db;
    const texts = { from: "31 jun", to: "", reason: "" };
    expect(refusalsOf(() => ask(db, { kind: "close", texts }))).toMatchObject([
      { code: "day-does-not-exist", field: "from" },
      { code: "text-missing", field: "reason" },
    ]);
    expect(calendarStory(db).versions).toHaveLength(1);
  });

  it("of weekdays proposes dates too", () => {
    const { db } = clinic();
    using _ = db;
    const texts = { openWeekdays: "wed" };
    expect(ask(db, { kind: "open weekdays", texts }).tubes).toBeGreaterThan(0);
  });
});

describe("the story of the calendar", () => {
  it("says who changed what when, the newest on top; of a change that changed nothing it says nothing", () => {
    const { db, today } = clinic();
    using _ = db;
    const on = addDays(today, 30);
    ask(db, closing(on, on));
    ask(db, { kind: "open weekdays", texts: { openWeekdays: "mon-fri" } });
    askCalendar(
      { db, staff: people.nurse },
      { actId: newId(), seen: 2, asked: { kind: "take a closure away", from: on } },
    );
    const closure = { from: on, to: on, reason: "building work" };
    expect(calendarStory(db).versions).toMatchObject([
      { version: 3, who: "Tansy Nurseworth", changes: [{ code: "no longer closed", closure }] },
      { version: 2, who: "Lorne Leadbeater", changes: [{ code: "closed", closure }] },
      { version: 1, who: null, changes: [] },
    ]);
  });

  it("who looked at whom a change touches is written down", async () => {
    const { db, today } = clinic();
    using _ = db;
    const asked = closing(addDays(today, 30), addDays(today, 30));
    await callerAs(db, people.lead).calendar.preview({ seen: 1, asked, page: 1 });
    expect(db.orm.select().from(reads).all()).toMatchObject([
      { subjectKind: "list", subjectId: "whom a change of the calendar touches", staffId: people.lead.id },
    ]);
  });
});

describe("law: a closure added and taken away", () => {
  it("leaves the calendar as it was, and nothing proposed", () => {
    const { db, today } = clinic();
    using _ = db;
    const before = viewCalendar(db).calendar;
    const spans = fc.record({
      away: fc.integer({ min: 0, max: 120 }),
      length: fc.integer({ min: 0, max: 40 }),
    });
    let touched = 0;
    fc.assert(
      fc.property(spans, ({ away, length }) => {
        const from = addDays(today, away);
        touched += ask(db, closing(from, addDays(from, length))).tubes;
        ask(db, { kind: "take a closure away", from });
        expect(calendarChanges(before, viewCalendar(db).calendar)).toEqual([]);
        expect(countOpenProposals(db)).toBe(0);
      }),
      { numRuns: 25 },
    );
    expect(touched).toBeGreaterThan(0);
  });
});

it("any other change goes the same way: what `change` makes of the newest is the next version", () => {
  const { db } = clinic();
  using _ = db;
  const half = { on: day("2030-12-24"), open: "morning", reason: "eve" } as const;
  const change = changeCalendar(lead(db), {
    actId: newId(),
    seen: 1,
    input: { half },
    change: (calendar) => ({ ...calendar, halfDays: [half] }),
  });
  expect(change).toEqual({ version: 2, changed: true, tubes: 0 });
  expect(viewCalendar(db).calendar.halfDays).toEqual([half]);
});
