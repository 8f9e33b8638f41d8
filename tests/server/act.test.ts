import { describe, expect, it } from "vitest";
import { saveDraftRow } from "#db/queries/drafts.ts";
import { patientChanges, patients } from "#db/schema/patients.ts";
import { inTransaction } from "#db/transaction.ts";
import { inAct } from "#server/act.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { people, SEEDED_AT, testDatabase } from "#tests/support/database.ts";

const act = { staff: people.nurse, actId: "act-0001", command: "tube.note", input: { tube: "t1", ml: 35 } };

/** Counts how often the work of an act was really done. */
function counted() {
  let times = 0;
  const work = () => {
    times += 1;
    return { eventId: `event ${times}` };
  };
  return { work, times: () => times };
}

describe("an act", () => {
  it("double Enter: the second submit gets the answer of the first and does nothing", () => {
    using db = testDatabase();
    const { work, times } = counted();
    expect(inAct({ db, ...act }, work)).toEqual({ eventId: "event 1" });
    expect(inAct({ db, ...act }, work)).toEqual({ eventId: "event 1" });
    expect(times()).toBe(1);
    expect(db.sqlite.prepare("select count(*) from acts").pluck().get()).toBe(1);
  });

  it("an answer lost on the way is given again, whatever the order of the keys", () => {
    using db = testDatabase();
    const { work, times } = counted();
    inAct({ db, ...act }, work);
    const again = inAct({ db, ...act, input: { ml: 35, tube: "t1" } }, work);
    expect(again).toEqual({ eventId: "event 1" });
    expect(times()).toBe(1);
  });

  it("from a draft, on a page that has seen more since, it is the same act", () => {
    using db = testDatabase();
    const { work, times } = counted();
    const saw = (lastSeen: number) => ({ ...act, input: { ...act.input, lastSeen } });
    inAct({ db, ...saw(1) }, work);
    expect(inAct({ db, ...saw(2) }, work)).toEqual({ eventId: "event 1" });
    expect(times()).toBe(1);
  });

  it.each([
    ["other input", { ...act, input: { tube: "t1", ml: 36 } }],
    ["another command", { ...act, command: "tube.other" }],
    ["another person", { ...act, staff: people.lead }],
  ])("the same id with %s is refused", (_, other) => {
    using db = testDatabase();
    const { work, times } = counted();
    inAct({ db, ...act }, work);
    expect(() => inAct({ db, ...other }, work)).toThrow(new DomainError({ code: "act-already-used" }));
    expect(times()).toBe(1);
  });

  it("a refusal writes nothing and leaves the id free for the mended form", () => {
    using db = testDatabase();
    const draft = { staffId: people.nurse.id, form: "f", subject: "s", content: {} };
    const refuse = () =>
      inAct({ db, ...act }, (tx, savedAt) => {
        saveDraftRow(tx, { ...draft, savedAt });
        throw new DomainError({ code: "day-in-future", args: { day: "2026-01-06" } });
      });
    expect(refuse).toThrow(DomainError);
    expect(db.sqlite.prepare("select count(*) from drafts").pluck().get()).toBe(0);
    expect(inAct({ db, ...act, input: { tube: "t1", ml: 1 } }, () => "saved")).toBe("saved");
  });

  it("work that returns nothing answers null, the first time and again", () => {
    using db = testDatabase();
    const nothing = () => undefined;
    expect(inAct({ db, ...act }, nothing)).toBeNull();
    expect(inAct({ db, ...act }, nothing)).toBeNull();
  });

  it("a promise is no result: nothing is written", () => {
    using db = testDatabase();
    const late = () => inAct({ db, ...act }, () => new Promise(() => {}));
    expect(late).toThrow("the work of an act is synchronous");
    expect(db.sqlite.prepare("select count(*) from acts").pluck().get()).toBe(0);
  });
});

describe("what an act writes", () => {
  const change = {
    id: "change-1",
    patientId: "p1",
    actId: act.actId,
    before: null,
    after: {},
    at: SEEDED_AT,
  };
  const patient = {
    id: "p1",
    familyName: "Testwell",
    givenName: "Ann",
    birthOn: null,
    language: "English",
    needsInterpreter: false,
    contact: {},
    search: "testwell ann",
    updatedAt: SEEDED_AT,
  };

  it("points to the act, which is written last", () => {
    using db = testDatabase();
    inAct({ db, ...act }, ({ orm }) => {
      orm.insert(patients).values(patient).run();
      orm.insert(patientChanges).values(change).run();
    });
    expect(db.orm.select({ actId: patientChanges.actId }).from(patientChanges).all()).toEqual([
      { actId: act.actId },
    ]);
  });

  it("cannot be written without an act: the commit is refused, and the patient is gone with it", () => {
    using db = testDatabase();
    const without = () =>
      inTransaction(db, ({ orm }) => {
        orm.insert(patients).values(patient).run();
        orm.insert(patientChanges).values(change).run();
      });
    expect(without).toThrow("FOREIGN KEY constraint failed");
    expect(db.orm.select().from(patients).all()).toEqual([]);
  });
});
