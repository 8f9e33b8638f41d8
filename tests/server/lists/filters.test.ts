import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { patientById, updatePatient } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { newId } from "#server/ids.ts";
import { DUE_PAGE } from "#server/lists/due-list.ts";
import { addDays, day } from "#shared/day/day.ts";
import type { FilterTexts } from "#shared/record/list-filter.ts";
import { unknownFact } from "#shared/tube/certainty.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import {
  called,
  type Entry,
  fellOut,
  placed,
  stepAssigned,
  whereaboutsNoted,
} from "#tests/support/factories.ts";
import { addInventedPatient, recordAs } from "#tests/support/patient.ts";
import { command } from "#tests/support/told.ts";

/** Fri 6 Nov 2026. A nephrostomy asks for an exchange after 63 / 77 / 90 days. */
const TODAY = day("2026-11-06");
const ago = (days: number): string => addDays(TODAY, -days);

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["Date"], now: new Date(`${TODAY}T12:00:00Z`) });
});
afterEach(() => {
  vi.useRealTimers();
});

type Of = { readonly service?: string };

/** One patient with one tube, both under this name; the first call is done. */
function record(db: Database, name: string, entries: readonly Entry[], { service }: Of = {}): void {
  addInventedPatient(db, name, `number of ${name}`);
  const row = patientById(db, name);
  if (row === undefined) throw new Error("no patient");
  const contact = { ...(row.contact as object), responsibleService: service ?? null };
  inTransaction(db, (tx) => updatePatient(tx, { ...row, contact }));
  const all = [...entries, called({ tube: name, on: TODAY })];
  recordAs(
    db,
    all.map((entry) => ({ ...command(entry), eventId: newId() })),
    name,
  );
}

/** Seven tubes, told apart by each of the things that lists filter by. */
function clinic(): Database & Disposable {
  const db = testDatabase();
  const tube = (name: string, days: number) => ({ tube: name, on: ago(days) });
  record(db, "left pcn", [placed(tube("left pcn", 80))], { service: "Urology" });
  record(db, "right pcn", [placed({ ...tube("right pcn", 80), side: "right" })], { service: "urology " });
  record(db, "pcn, side unknown", [placed({ ...tube("pcn, side unknown", 80), side: unknownFact })]);
  record(db, "stent", [placed({ ...tube("stent", 30), kind: "ureteral stent" })], { service: "Liver unit" });
  record(db, "drain", [placed({ ...tube("drain", 20), kind: "abscess drain", side: "not sided" })]);
  record(db, "of petra", [
    placed(tube("of petra", 70)),
    stepAssigned({
      tube: "of petra",
      on: ago(1),
      owner: { role: "physician", staffId: people.physician.id },
    }),
  ]);
  record(db, "long past", [placed(tube("long past", 200))]);
  return db;
}

const lists = (db: Database) => callerAs(db, people.nurse).list;
type Lines = readonly { readonly tube: { readonly id: string } | null }[];
const names = (lines: Lines) => lines.map(({ tube }) => tube?.id ?? "record").toSorted();

const cases: readonly (readonly [FilterTexts, readonly string[]])[] = [
  [{}, ["drain", "left pcn", "long past", "of petra", "pcn, side unknown", "right pcn", "stent"]],
  [{ kind: "pcn" }, ["left pcn", "long past", "of petra", "pcn, side unknown", "right pcn"]],
  [{ kind: "pcn r" }, ["right pcn"]],
  [{ kind: "JJ" }, ["stent"]],
  [{ kind: "perc chole" }, []],
  [{ side: "right" }, ["right pcn"]],
  [{ side: "unknown" }, ["pcn, side unknown"]],
  [{ side: "not sided" }, ["drain"]],
  [{ role: "collection" }, ["drain"]],
  [{ role: "internal" }, ["stent"]],
  [{ service: "urology" }, ["left pcn", "right pcn"]],
  [{ service: "unknown" }, ["drain", "long past", "of petra", "pcn, side unknown"]],
  [{ owner: "@petra" }, ["of petra"]],
  // Long past its latest date, the nurse's step is a physician's today; the review of a drain is one anyway.
  [{ owner: "physician" }, ["drain", "long past", "of petra"]],
  [{ owner: "nurse", kind: "pcn", side: "l", service: "Urology" }, ["left pcn"]],
];

describe("Exchanges under a filter", () => {
  it.each(cases)("%j", async (filter, expected) => {
    using db = clinic();
    const { lines, total, asked, next } = await lists(db).exchanges({ filter });
    expect(names(lines)).toEqual(expected);
    expect(total).toBe(asked.words === null ? null : expected.length);
    expect(next).toBeNull();
    expect(asked.refusals).toEqual([]);
  });

  it("shows with each owner what that filter finds, and all of it by some filter of owners", async () => {
    using db = clinic();
    const { asked, lines } = await lists(db).exchanges({});
    const roles = asked.choices.owner.map(({ value }) => value).filter((value) => !value.startsWith("@"));
    const found = await Promise.all(roles.map((owner) => lists(db).exchanges({ filter: { owner } })));
    for (const [index, { lines: of }] of found.entries())
      expect(of.map(({ owner }) => owner.role)).toEqual(of.map(() => roles[index]));
    expect(names(found.flatMap(({ lines: of }) => of))).toEqual(names(lines));
  });

  it("goes on under the same filter from page to page, and counts all of them", async () => {
    using db = testDatabase();
    for (let index = 0; index < DUE_PAGE + 5; index += 1) {
      record(db, `left ${index}`, [placed({ tube: `left ${index}`, on: ago(60) })]);
      if (index % 10 === 0)
        record(db, `right ${index}`, [placed({ tube: `right ${index}`, on: ago(60), side: "right" })]);
    }
    const filter = { side: "left" };
    const first = await lists(db).exchanges({ filter });
    const second = await lists(db).exchanges({ filter, place: first.next ?? undefined });
    expect([first.total, second.total]).toEqual([DUE_PAGE + 5, DUE_PAGE + 5]);
    expect(second.lines).toHaveLength(5);
    const all = names([...first.lines, ...second.lines]);
    expect(new Set(all).size).toBe(DUE_PAGE + 5);
    expect(all.every((name) => name.startsWith("left"))).toBe(true);
  });

  it.each([
    [{ kind: "hose" }, "kind", "word-unknown"],
    [{ owner: "@nobody" }, "owner", "word-unknown"],
    [{ service: "cardiology" }, "service", "word-unknown"],
    [{ kind: "pcn l", side: "right" }, "side", "side-differs"],
  ])("%j is refused at %s: nothing is listed, and what was typed stands", async (filter, field, code) => {
    using db = clinic();
    const { lines, total, asked } = await lists(db).exchanges({ filter });
    expect([lines, total]).toEqual([[], null]);
    expect(asked.refusals).toMatchObject([{ field, code }]);
    expect(asked.texts).toEqual(filter);
    const today = await lists(db).today({ filter });
    expect(today.parts["past-latest"]).toEqual({ lines: [], total: 0 });
    expect(today.asked.refusals).toEqual(asked.refusals);
  });

  it("offers the services of the record, each once, and the people with an open account", async () => {
    using db = clinic();
    const { choices } = (await lists(db).exchanges({})).asked;
    expect(choices.service.map(({ label }) => label)).toEqual(["Liver unit", "Urology", "none named"]);
    expect(choices.owner.map(({ value }) => value)).toEqual([
      "nurse",
      "caller",
      "physician",
      "lead",
      "@corin",
      "@lorne",
      "@petra",
      "@tansy",
    ]);
  });
});

describe("Today under a filter", () => {
  it.each(cases)("has in each part what Exchanges has, and counts no more: %j", async (filter, expected) => {
    using db = clinic();
    const { parts } = await lists(db).today({ filter });
    const shown = names([...parts["past-latest"].lines, ...parts.due.lines]);
    // Of all seven, only this one's target is still to come.
    expect(shown).toEqual(expected.filter((name) => name !== "of petra"));
    expect(parts["past-latest"].total + parts.due.total).toBe(shown.length);
  });

  it("filters tubes that are out, calls and loose ends with their counts", async () => {
    using db = testDatabase();
    for (const side of ["left", "right"] as const) {
      record(db, `${side} out`, [
        placed({ tube: `${side} out`, on: ago(40), side }),
        fellOut({ tube: `${side} out`, on: TODAY }),
      ]);
      addInventedPatient(db, `${side} call`, `${side} call`);
      const fresh = placed({ tube: `${side} call`, on: ago(3), side });
      recordAs(db, [{ ...command(fresh), eventId: newId() }], `${side} call`);
    }
    const { out, calls } = (await lists(db).today({ filter: { side: "left" } })).parts;
    expect([names(out.lines), out.total]).toEqual([["left out"], 1]);
    expect([names(calls.lines), calls.total]).toEqual([["left call"], 1]);
  });

  it("keeps what concerns the whole record of somebody with such a tube", async () => {
    using db = testDatabase();
    record(db, "inpatient", [
      placed({ tube: "inpatient", on: ago(20), side: "left" }),
      whereaboutsNoted({ on: ago(5) }),
    ]);
    const calls = async (filter: FilterTexts) =>
      (await lists(db).today({ filter })).parts.calls.lines.map(({ step }) => step.kind);
    expect(await calls({ kind: "pcn l" })).toContain("whereabouts");
    expect(await calls({ kind: "pcn r" })).not.toContain("whereabouts");
  });
});
