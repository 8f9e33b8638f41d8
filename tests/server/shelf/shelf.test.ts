import { describe, expect, it } from "vitest";
import { shelfChangesOfAct } from "#db/queries/shelf.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { addToShelf } from "#server/shelf/add-to-shelf.ts";
import { changeOnShelf } from "#server/shelf/change-on-shelf.ts";
import { putBackOnShelf, takeOffShelf } from "#server/shelf/shelve.ts";
import { viewShelf } from "#server/shelf/view-shelf.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { refusalsOf } from "#tests/support/refusal.ts";

const wire = { sort: "wire", name: "Standard 0.035", outside: ".035 in", length: "145" };

const doing = (db: Database) => ({ db, staff: people.nurse });
const add = (db: Database, texts: Texts) => addToShelf(doing(db), { actId: newId(), texts });
const undo = (
  db: Database,
  undoes: string,
  staff: { id: string; role: "nurse" | "physician" } = people.nurse,
) => undoAct({ db, staff }, { actId: newId(), undoes });

const names = (db: Database) => {
  const { types, off } = viewShelf(db);
  return { on: types.map(({ name }) => name), off: off.map(({ name }) => name) };
};

/** A type as the page last saw it. */
function seen(db: Database, typeId: string) {
  const { types, off } = viewShelf(db);
  const found = [...types, ...off].find(({ id }) => id === typeId);
  return { typeId, lastUpdatedAt: found?.updatedAt ?? 0 };
}

describe("the clinic's shelf", () => {
  it("holds what was added, by sort, then by size, then by length", () => {
    using db = testDatabase();
    add(db, { sort: "tube", name: "Drain 8", outside: "8 f" });
    add(db, { ...wire, name: "Long", length: "260" });
    add(db, wire);
    add(db, { ...wire, name: "Thin", outside: ".018 in" });
    add(db, { ...wire, name: "Unmeasured", outside: "?" });
    expect(names(db).on).toEqual(["Thin", "Standard 0.035", "Long", "Unmeasured", "Drain 8"]);
  });

  it("stands beside every form, without what was taken off", async () => {
    using db = testDatabase();
    const { typeId } = add(db, wire);
    const { shelf } = await callerAs(db, people.caller).record.beside();
    expect(shelf).toMatchObject([
      {
        id: typeId,
        name: "Standard 0.035",
        outside: { certainty: "confirmed", value: lengthOf(0.035, "in") },
      },
    ]);
    takeOffShelf(doing(db), { actId: newId(), ...seen(db, typeId) });
    expect((await callerAs(db, people.caller).record.beside()).shelf).toEqual([]);
  });

  it("has one of each name, whatever its case, until that is taken off", () => {
    using db = testDatabase();
    const { typeId } = add(db, wire);
    const again = { ...wire, name: "STANDARD  0.035" };
    expect(refusalsOf(() => add(db, again))).toEqual([
      { code: "shelf-name-taken", field: "name", args: { text: "STANDARD  0.035" } },
    ]);
    takeOffShelf(doing(db), { actId: newId(), ...seen(db, typeId) });
    add(db, again);
    expect(names(db)).toEqual({ on: ["STANDARD  0.035"], off: ["Standard 0.035"] });
    expect(
      refusalsOf(() => putBackOnShelf(doing(db), { actId: newId(), ...seen(db, typeId) })),
    ).toMatchObject([{ code: "shelf-name-taken" }]);
  });

  it("says what was meant where a form is sent that it cannot take", () => {
    using db = testDatabase();
    expect(refusalsOf(() => add(db, { ...wire, outside: ".35 in" }))).toEqual([
      { code: "length-absurd", field: "outside", args: { text: ".35 in", limit: "0.01 to 0.052 in" } },
    ]);
    expect(names(db).on).toEqual([]);
  });

  it("does an act that is sent twice once", () => {
    using db = testDatabase();
    const input = { actId: newId(), texts: wire };
    expect(addToShelf(doing(db), input)).toEqual(addToShelf(doing(db), input));
    expect(names(db).on).toEqual(["Standard 0.035"]);
  });

  it("keeps what a type was before it was changed", () => {
    using db = testDatabase();
    const { typeId } = add(db, wire);
    const texts = { ...wire, outside: ".038 in" };
    const { actId } = changeOnShelf(doing(db), { actId: newId(), ...seen(db, typeId), texts });
    const [change] = shelfChangesOfAct(db, actId);
    expect(change?.before?.facts.outside).toEqual({ certainty: "confirmed", value: lengthOf(0.035, "in") });
    expect(change?.after.facts.outside).toEqual({ certainty: "confirmed", value: lengthOf(0.038, "in") });
  });

  it("is not changed over what somebody else changed since", () => {
    using db = testDatabase();
    const { typeId } = add(db, wire);
    const before = { typeId, lastUpdatedAt: seen(db, typeId).lastUpdatedAt - 1 };
    for (const act of [takeOffShelf, putBackOnShelf])
      expect(refusalsOf(() => act(doing(db), { actId: newId(), ...before }))).toEqual([
        { code: "changed-meanwhile", args: { entries: "Standard 0.035" } },
      ]);
    expect(
      refusalsOf(() => changeOnShelf(doing(db), { actId: newId(), ...before, texts: wire })),
    ).toMatchObject([{ code: "changed-meanwhile" }]);
    expect(refusalsOf(() => takeOffShelf(doing(db), { actId: newId(), ...before, typeId: "none" }))).toEqual([
      { code: "shelf-type-unknown" },
    ]);
  });
});

describe("undo", () => {
  it("takes a type off that was new, and makes one as before that was changed", () => {
    using db = testDatabase();
    const { typeId, actId: added } = add(db, wire);
    const texts = { ...wire, name: "Stiff 0.035" };
    const { actId: changed } = changeOnShelf(doing(db), { actId: newId(), ...seen(db, typeId), texts });
    expect(undo(db, changed)).toEqual({ undone: 1 });
    expect(names(db).on).toEqual(["Standard 0.035"]);
    undo(db, added);
    expect(names(db)).toEqual({ on: [], off: ["Standard 0.035"] });
  });

  it("puts back what was taken off", () => {
    using db = testDatabase();
    const { typeId } = add(db, wire);
    const { actId } = takeOffShelf(doing(db), { actId: newId(), ...seen(db, typeId) });
    undo(db, actId);
    expect(names(db)).toEqual({ on: ["Standard 0.035"], off: [] });
  });

  it("is refused where the type was changed since, and of who does not keep the shelf", () => {
    using db = testDatabase();
    const { typeId, actId } = add(db, wire);
    changeOnShelf(doing(db), { actId: newId(), ...seen(db, typeId), texts: { ...wire, length: "180" } });
    expect(refusalsOf(() => undo(db, actId))).toEqual([
      { code: "shelf-changed-since", args: { names: "Standard 0.035" } },
    ]);
    expect(refusalsOf(() => undo(db, actId, people.physician))).toEqual([{ code: "not-allowed" }]);
  });
});
