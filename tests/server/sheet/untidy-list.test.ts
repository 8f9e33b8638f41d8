import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { everyPatient } from "#db/queries/patients.ts";
import { events } from "#db/schema/events.ts";
import { patients } from "#db/schema/patients.ts";
import { openSteps, tubes } from "#db/schema/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { loadSheet } from "#server/sheet/load-sheet.ts";
import { sheetReading, standSheet } from "#server/sheet/stand-sheet.ts";
import type { Answers } from "#shared/sheet/answers.ts";
import type { Standing } from "#shared/sheet/stand.ts";
import { fold } from "#shared/tube/fold.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { broughtIn, kept } from "#tests/support/sheet.ts";

/** Windows-1252, semicolons, a title, blank lines, headings that repeat, a total: as a list grows in a clinic. */
const list = readFileSync("docs/untidy-list.csv");
const answers: Partial<Answers> = { dateOrder: "day first", nameOrder: "family name first" };

/** What is to be mended in each row that does not come in. */
const setAside = {
  10: ["kind: cell-formula"],
  15: ["placedOn: cell-broken"],
  20: ["number: number-cut-short"],
  25: ["size: two-sizes"],
  30: ["kind: two-tubes"],
  35: ["kind: kind-not-said"],
  40: ["number: number-shared"],
  45: ["number: number-shared"],
  50: ["placedOn: month-or-day-unclear"],
  57: ["placedOn: day-number"],
  62: ["removedOn: tube-is-out"],
  67: ["removedOn: tube-is-out"],
  72: ["removedOn: tube-is-out"],
  77: ["wholeName: name-one-word"],
  82: ["birthOn: birth-century-unclear"],
  87: ["placedOn: date-other-order"],
  92: ["number: text-missing"],
  97: ["kind: word-unclear"],
  102: ["null: two-plans"],
  109: ["placedOn: day-in-future"],
  114: ["placedOn: tract-after-tube"],
  119: ["side: cells-differ"],
  124: ["telephones: telephone-not-understood"],
  129: ["kind: kind-not-said"],
  134: ["role: role-missing", "mode: mode-missing"],
};

const standingsOf = (db: Database): Promise<readonly Standing[]> =>
  standSheet(db, loadSheet(db, kept(db, list, answers)));

const counts = (found: readonly Standing[]): Record<string, number> =>
  Object.fromEntries(
    ["comes in", "here already", "said above", "no tube", "set aside"].map((kind) => [
      kind,
      found.filter(({ stands }) => stands === kind).length,
    ]),
  );

const told = (found: readonly Standing[]) =>
  Object.fromEntries(
    found.flatMap((standing) =>
      standing.stands === "set aside"
        ? [[standing.row, standing.refusals.map(({ field, refusal }) => `${field}: ${refusal.code}`)]]
        : [],
    ),
  );

const names = (db: Database): readonly string[] =>
  everyPatient(db).map(({ familyName, givenName }) => `${familyName}, ${givenName}`);

/** The morning on which the list was printed. */
beforeAll(() => {
  vi.useFakeTimers({ toFake: ["Date"], now: new Date("2026-11-23T09:30:00Z") });
});
afterAll(() => {
  vi.useRealTimers();
});

describe("docs/untidy-list.csv", { timeout: 60_000 }, () => {
  it("asks only for the order of dates and of names, and matches every column but the initials", () => {
    using db = testDatabase();
    const sheet = loadSheet(db, kept(db, list));
    expect(sheetReading(db, sheet).refusals).toEqual([
      { code: "date-order-asked", args: { row: 5, text: "3/9/26" } },
      { code: "name-order-asked", args: { row: 7 } },
    ]);
    expect(sheet.answers.columns).toEqual([
      "wholeName",
      "birthOn",
      "number",
      "kind",
      "side",
      "size",
      "cavity",
      "placedOn",
      "from",
      "exchangedOn",
      "exchangeBy",
      "reviewBy",
      "removedOn",
      "telephones",
      "needsInterpreter",
      "note",
      "note",
      "left out",
    ]);
    expect(sheet.sheet.repeated).toEqual([55, 107]);
  });

  it("stands row by row with its reason", async () => {
    using db = testDatabase();
    const found = await standingsOf(db);
    expect(counts(found)).toEqual({
      "comes in": 125,
      "here already": 0,
      "said above": 3,
      "no tube": 1,
      "set aside": 25,
    });
    expect(told(found)).toEqual(setAside);
    expect(found.flatMap((row) => (row.stands === "said above" ? [[row.row, row.above]] : []))).toEqual([
      [158, 9],
      [159, 28],
      [160, 80],
    ]);
    expect(
      found.flatMap((row) =>
        row.stands === "comes in" ? row.alikeRows.map((other) => [row.row, other]) : [],
      ),
    ).toEqual([
      [156, 16],
      [157, 46],
    ]);
  });

  it("keeps the signs of its old page, and what a row says beside its columns", async () => {
    using db = testDatabase();
    await broughtIn(db, list, answers);
    expect(names(db)).toEqual(
      expect.arrayContaining([
        "BRÄCKENWICK, Zoë",
        "Fennélock, Désirée",
        "Núñezcombe, José",
        "Ærøholt, Søren",
        "van der Mosslock, Anaïs",
      ]),
    );
    const spoken = db.orm
      .select()
      .from(patients)
      .all()
      .filter(({ needsInterpreter }) => needsInterpreter);
    expect(spoken.map(({ language }) => language).toSorted()).toEqual(["", "Cornish", "Welsh"]);
    const notes = everyPatient(db).flatMap(({ id }) =>
      loadRecord(db, id).events.map(({ payload }) => ("note" in payload ? payload.note : null)),
    );
    expect(notes).toContain("Comments: +ve swab; on day 3\nOther notes: flush 10 mL\nmorning and evening");
  });

  it("gives every tube an open step with a day and an owner, and no contradiction", async () => {
    using db = testDatabase();
    expect(await broughtIn(db, list, answers)).toMatchObject({ tubes: 125, patients: 116, setAside: 25 });
    const steps = db.orm.select().from(openSteps).all();
    const stepsOf = new Map(steps.map((step) => [step.tubeId, step]));
    for (const { id } of db.orm.select().from(tubes).all()) {
      expect(stepsOf.get(id)?.dueOn).toMatch(/^\d{4}-\d{2}-\d{2}$/);
      expect(stepsOf.get(id)?.ownerRole).toMatch(/^\w/);
    }
    const contradictions = everyPatient(db).flatMap(
      ({ id }) => fold(loadRecord(db, id).events).contradictions,
    );
    expect(contradictions).toEqual([]);
    expect(steps.filter(({ kind }) => kind === "reconcile")).toHaveLength(2);
  });

  it("changes nothing when it is brought in again", async () => {
    using db = testDatabase();
    await broughtIn(db, list, answers);
    const before = db.orm.select().from(events).all();
    const again = await standingsOf(db);
    expect(counts(again)).toEqual({
      "comes in": 0,
      "here already": 125,
      "said above": 3,
      "no tube": 1,
      "set aside": 25,
    });
    expect(told(again)).toEqual(setAside);
    await expect(broughtIn(db, list, answers)).rejects.toThrow("nothing-to-bring-in");
    expect(db.orm.select().from(events).all()).toEqual(before);
  });

  it("is taken away whole by one undo", async () => {
    using db = testDatabase();
    const { actId } = await broughtIn(db, list, answers);
    undoAct({ db, staff: people.nurse }, { actId: newId(), undoes: actId });
    expect(db.orm.select().from(tubes).all()).toEqual([]);
    expect(db.orm.select().from(openSteps).all()).toEqual([]);
    expect(everyPatient(db).filter(({ withdrawnAt }) => withdrawnAt === null)).toEqual([]);
    expect(counts(await standingsOf(db))["comes in"]).toBe(125);
  });
});
