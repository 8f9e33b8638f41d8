import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { PART_PAGE } from "#server/lists/day-part.ts";
import { DUE_PAGE } from "#server/lists/due-list.ts";
import { addDays, day } from "#shared/day/day.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import {
  called,
  type Entry,
  exchangePlanned,
  fellOut,
  placed,
  removed,
  takenOver,
} from "#tests/support/factories.ts";
import { addInventedPatient, recordAs } from "#tests/support/patient.ts";
import { command } from "#tests/support/told.ts";

/** Fri 6 Nov 2026. A nephrostomy asks for an exchange after 63 / 77 / 90 days; target 30 Oct for one placed on 14 Aug. */
const TODAY = day("2026-11-06");
const ago = (days: number): string => addDays(TODAY, -days);

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["Date"], now: new Date(`${TODAY}T12:00:00Z`) });
});
afterEach(() => {
  vi.useRealTimers();
});

/** One patient with one tube, both under this name; the first call is done. */
function record(db: Database, name: string, entries: readonly Entry[]): void {
  addInventedPatient(db, name, `number of ${name}`);
  const all = [...entries, called({ tube: name, on: TODAY })];
  recordAs(
    db,
    all.map((entry) => ({ ...command(entry), eventId: newId() })),
    name,
  );
}

const nephrostomy = (tube: string, days: number): Entry => placed({ tube, on: ago(days) });

const lists = (db: Database) => callerAs(db, people.nurse).list;
const names = (lines: readonly { readonly tube: { readonly id: string } | null }[]) =>
  lines.map(({ tube }) => tube?.id);

describe("Exchanges", () => {
  it("lists tubes by the day on which their next work is due, and one without any date among them, once", async () => {
    using db = testDatabase();
    record(db, "in time", [nephrostomy("in time", 20)]);
    record(db, "past latest", [nephrostomy("past latest", 100)]);
    record(db, "undated", [takenOver({ tube: "undated", on: "?", recordedOn: TODAY })]);
    record(db, "past target", [nephrostomy("past target", 80)]);
    const { lines, next } = await lists(db).exchanges({});
    expect(names(lines)).toEqual(["past latest", "past target", "undated", "in time"]);
    expect(lines.map(({ step }) => step.kind)).toEqual([
      "exchange",
      "exchange",
      "assess the date",
      "exchange",
    ]);
    expect(next).toBeNull();
  });

  it("shows whose, what, its dates, and who has it by now", async () => {
    using db = testDatabase();
    record(db, "tube", [nephrostomy("tube", 84)]);
    const [line] = (await lists(db).exchanges({})).lines;
    expect(line).toMatchObject({
      patient: { familyName: "Brackenfold", givenName: "Ottoline", number: "number of tube" },
      tube: { name: expect.stringContaining("nephrostomy"), clockEarliest: "2026-08-14", marks: [] },
      step: { earliest: "2026-10-16", target: "2026-10-30", latest: "2026-11-12" },
      owner: { role: "nurse", rung: 1, name: null },
      row: "example",
    });
  });

  it("does not list a tube that is out", async () => {
    using db = testDatabase();
    record(db, "out", [nephrostomy("out", 50), fellOut({ tube: "out", on: TODAY })]);
    record(db, "ended", [nephrostomy("ended", 50), removed({ tube: "ended", on: TODAY })]);
    expect((await lists(db).exchanges({})).lines).toEqual([]);
  });

  it("goes on after the last line of a page, leaves none out and shows none twice", async () => {
    using db = testDatabase();
    const all = Array.from({ length: DUE_PAGE + 3 }, (_, index) => `tube ${String(index).padStart(2, "0")}`);
    // Placed on three days only, so that pages break between steps of the same day.
    for (const [index, name] of all.entries()) record(db, name, [nephrostomy(name, 60 + (index % 3))]);
    const first = await lists(db).exchanges({});
    expect(first.lines).toHaveLength(DUE_PAGE);
    const second = await lists(db).exchanges({ place: first.next ?? undefined });
    expect(second.next).toBeNull();
    expect(names([...first.lines, ...second.lines]).toSorted()).toEqual(all);
    const due = [...first.lines, ...second.lines].map(({ step }) => step.dueOn);
    expect(due).toEqual(due.toSorted());
  });

  it("has no further page when the last page is just full", async () => {
    using db = testDatabase();
    for (let index = 0; index < DUE_PAGE; index += 1)
      record(db, `tube ${index}`, [nephrostomy(`tube ${index}`, 60)]);
    expect((await lists(db).exchanges({})).next).toBeNull();
  });
});

describe("Today", () => {
  it("has each step in one part: out, past latest, without a date, due today, loose ends", async () => {
    using db = testDatabase();
    record(db, "out", [nephrostomy("out", 100), fellOut({ tube: "out", on: TODAY })]);
    record(db, "latest yesterday", [nephrostomy("latest yesterday", 91)]);
    record(db, "latest today", [nephrostomy("latest today", 90)]);
    record(db, "target today", [nephrostomy("target today", 77)]);
    record(db, "target on Monday", [nephrostomy("target on Monday", 74)]);
    record(db, "undated", [takenOver({ tube: "undated", on: "?", recordedOn: TODAY })]);
    record(db, "told removed", [
      nephrostomy("told removed", 20),
      removed({ tube: "told removed", on: TODAY, toldBy: "the patient", whole: confirmed(true) }),
    ]);
    const { parts, looseEnds } = await lists(db).today();
    const shown = Object.entries(parts).map(([part, { lines }]) => [part, names(lines)]);
    expect(Object.fromEntries(shown)).toEqual({
      out: ["out"],
      "past-latest": ["latest yesterday"],
      undated: ["undated"],
      visits: [],
      due: ["latest today", "target today"],
      calls: [],
      "loose-ends": ["told removed"],
    });
    expect(Object.values(parts).map(({ total }) => total)).toEqual([1, 1, 1, 0, 2, 0, 1]);
    expect(looseEnds).toEqual([{ kind: "confirm removal", count: 1 }]);
  });

  it("has an exchange that is planned for today, before its target has come, and first of all that is due", async () => {
    using db = testDatabase();
    const plannedFor = (tube: string, planned: string) => [
      nephrostomy(tube, 65),
      exchangePlanned({ tube, planned, on: ago(1) }),
    ];
    record(db, "today", plannedFor("today", TODAY));
    record(db, "due since long", [nephrostomy("due since long", 85)]);
    record(db, "tomorrow", plannedFor("tomorrow", addDays(TODAY, 1)));
    const { due } = (await lists(db).today()).parts;
    expect(names(due.lines)).toEqual(["today", "due since long"]);
    expect(due.total).toBe(2);
  });

  it.each([
    [0, []],
    [1, ["call"]],
    [5, ["call"]],
  ])("has the first call of a tube placed %i days ago: %j", async (days, kinds) => {
    using db = testDatabase();
    addInventedPatient(db, "p", "1");
    recordAs(db, [{ ...command(nephrostomy("tube", days)), eventId: newId() }], "p");
    const { calls } = (await lists(db).today()).parts;
    expect(calls.lines.map(({ step }) => step.kind)).toEqual(kinds);
    expect(calls.total).toBe(kinds.length);
  });

  it("counts what it does not show", async () => {
    using db = testDatabase();
    for (let index = 0; index < 43; index += 1)
      record(db, `tube ${index}`, [nephrostomy(`tube ${index}`, 95)]);
    const { lines, total } = (await lists(db).today()).parts["past-latest"];
    expect(lines).toHaveLength(40);
    expect(total).toBe(43);
  });

  it.each([
    ["of unknown placement", "assess the date", takenOver({ tube: "p", on: "?", recordedOn: ago(3) })],
    [
      "of unknown placement, a stent",
      "assess the date",
      takenOver({ tube: "p", kind: "ureteral stent", on: "?", recordedOn: ago(3) }),
    ],
    [
      "of no kind here, without the operator's date",
      "remove or exchange",
      placed({ tube: "p", kind: "other", role: "drains an organ", mode: "to bag", on: ago(10) }),
    ],
  ])("has a tube %s without a date, among no others", async (_, kind, entry) => {
    using db = testDatabase();
    record(db, "p", [entry]);
    const { parts } = await lists(db).today();
    expect(parts.undated.lines.map(({ step }) => step.kind)).toEqual([kind]);
    expect([parts.undated.total, parts.due.total]).toEqual([1, 0]);
  });

  it("has a stent that waits for the operator's date under what is due, since its latest date is known", async () => {
    using db = testDatabase();
    record(db, "stent", [placed({ tube: "stent", kind: "ureteral stent", on: ago(10) })]);
    const { undated, due } = (await lists(db).today()).parts;
    expect([names(undated.lines), names(due.lines)]).toEqual([[], ["stent"]]);
  });

  it("has a tube without a date whose exchange is planned for today among the visits", async () => {
    using db = testDatabase();
    record(db, "coming", [
      takenOver({ tube: "coming", on: "?", recordedOn: ago(3) }),
      exchangePlanned({ tube: "coming", planned: TODAY, on: ago(1) }),
    ]);
    const { undated, due } = (await lists(db).today()).parts;
    expect([undated.total, names(due.lines), due.total]).toEqual([0, ["coming"], 1]);
  });
});

describe("One part of Today by itself", () => {
  const named = (from: number, to: number) =>
    Array.from({ length: to - from }, (_, index) => `tube ${String(from + index).padStart(3, "0")}`);

  it("goes on page by page, leaves none out and shows none twice, also past the visits planned for today", async () => {
    using db = testDatabase();
    const planned = named(0, 4);
    const due = named(4, PART_PAGE + 3);
    for (const name of planned)
      record(db, name, [nephrostomy(name, 65), exchangePlanned({ tube: name, planned: TODAY, on: ago(1) })]);
    for (const name of due) record(db, name, [nephrostomy(name, 80)]);
    const page = (number: number) => lists(db).dayPart({ part: "due", page: number });
    const [first, second, third] = [await page(1), await page(2), await page(3)];
    expect([first.lines.length, second.lines.length, third.lines.length]).toEqual([PART_PAGE, 3, 0]);
    expect([first.before, second.before]).toEqual([0, PART_PAGE]);
    expect([first.total, second.total, third.total]).toEqual(Array(3).fill(PART_PAGE + 3));
    const shown = names([...first.lines, ...second.lines]);
    expect(shown.slice(0, 4).toSorted()).toEqual(planned);
    expect(shown.toSorted()).toEqual([...planned, ...due]);
  });

  it("keeps to the filter, and counts under it", async () => {
    using db = testDatabase();
    record(db, "nephrostomy", [takenOver({ tube: "nephrostomy", on: "?", recordedOn: TODAY })]);
    record(db, "drain", [takenOver({ tube: "drain", kind: "abscess drain", on: "?", recordedOn: TODAY })]);
    const part = { part: "undated", page: 1 } as const;
    expect((await lists(db).dayPart(part)).total).toBe(2);
    const { lines, total } = await lists(db).dayPart({ ...part, filter: { kind: "pcn" } });
    expect([names(lines), total]).toEqual([["nephrostomy"], 1]);
  });

  it("lists nothing under a filter that is not understood", async () => {
    using db = testDatabase();
    record(db, "undated", [takenOver({ tube: "undated", on: "?", recordedOn: TODAY })]);
    const { lines, total, asked } = await lists(db).dayPart({
      part: "undated",
      page: 1,
      filter: { kind: "hose" },
    });
    expect([lines, total]).toEqual([[], 0]);
    expect(asked.refusals).toMatchObject([{ field: "kind", code: "word-unknown" }]);
  });
});
