import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { DUE_PAGE } from "#server/lists/due-list.ts";
import { addDays, day } from "#shared/day/day.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import {
  called,
  command,
  type Entry,
  exchangePlanned,
  fellOut,
  placed,
  removed,
  takenOver,
} from "#tests/support/factories.ts";
import { addInventedPatient, recordAs } from "#tests/support/patient.ts";

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
  it("has each step in one part: out, past latest, due today, loose ends", async () => {
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
    const { out, pastLatest, dueToday, looseEnds, counts } = await lists(db).today();
    expect(names(out)).toEqual(["out"]);
    expect(names(pastLatest)).toEqual(["latest yesterday"]);
    expect(names(dueToday)).toEqual(["latest today", "target today", "undated"]);
    expect(names(looseEnds)).toEqual(["told removed"]);
    expect(counts).toEqual({
      urgent: 1,
      pastLatest: 1,
      dueToday: 3,
      calls: 0,
      looseEnds: [{ kind: "confirm removal", count: 1 }],
    });
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
    const { dueToday, counts } = await lists(db).today();
    expect(names(dueToday)).toEqual(["today", "due since long"]);
    expect(counts.dueToday).toBe(2);
  });

  it.each([
    [0, []],
    [1, ["call"]],
    [5, ["call"]],
  ])("has the first call of a tube placed %i days ago: %j", async (days, kinds) => {
    using db = testDatabase();
    addInventedPatient(db, "p", "1");
    recordAs(db, [{ ...command(nephrostomy("tube", days)), eventId: newId() }], "p");
    const { calls, counts } = await lists(db).today();
    expect(calls.map(({ step }) => step.kind)).toEqual(kinds);
    expect(counts.calls).toBe(kinds.length);
  });

  it("counts what it does not show", async () => {
    using db = testDatabase();
    for (let index = 0; index < 43; index += 1)
      record(db, `tube ${index}`, [nephrostomy(`tube ${index}`, 95)]);
    const { pastLatest, counts } = await lists(db).today();
    expect(pastLatest).toHaveLength(40);
    expect(counts.pastLatest).toBe(43);
  });
});
