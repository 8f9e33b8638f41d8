import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { stepsOf } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { closeFlag, handFlag, raiseFlag } from "#server/calls/flag-act.ts";
import { listUnhanded } from "#server/calls/unhanded-flags.ts";
import { viewFlag } from "#server/calls/view-flag.ts";
import { newId } from "#server/ids.ts";
import { undoAct } from "#server/record/undo-act.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { fellOut, placed } from "#tests/support/factories.ts";
import { addInventedPatient, recordAs } from "#tests/support/patient.ts";
import { refusalsOf } from "#tests/support/refusal.ts";
import { command } from "#tests/support/told.ts";

/** Monday, 14:05 in London. */
beforeEach(() => vi.useFakeTimers({ toFake: ["Date"], now: new Date("2026-08-17T13:05:00Z") }));
afterEach(() => vi.useRealTimers());

/** Two patients; the first with a left nephrostomy of Fri 14 Aug 2026. */
function clinic(): Database & Disposable {
  const db = testDatabase({ isDemo: false });
  addInventedPatient(db, "patient-1", "000417");
  addInventedPatient(db, "patient-2", "000418");
  recordAs(db, [{ ...command(placed()), eventId: "p1" }], "patient-1");
  return db;
}

const caller = (db: Database) => ({ db, staff: people.caller });
const about = (patientId: string, texts: Texts) => ({ actId: newId(), patientId, lastSeen: 99, texts });
const raise = (db: Database, texts: Texts = {}, patientId = "patient-1") =>
  raiseFlag(caller(db), about(patientId, { row: "fever", handedTo: "nobody yet", ...texts }));
const hand = (db: Database, flagId: string, texts: Texts = {}) =>
  handFlag(caller(db), { ...about("patient-1", { to: "Dr Example", ...texts }), flagId });
const close = (db: Database, flagId: string, texts: Texts = {}) =>
  closeFlag(caller(db), { ...about("patient-1", { what: "seen", by: "Dr Example", ...texts }), flagId });
const flagSteps = (db: Database, patientId = "patient-1") =>
  stepsOf(db, patientId).filter(({ kind }) => kind === "red flag");
const unhanded = (db: Database) => listUnhanded(db).map(({ says, time }) => [says, time]);
const codes = (work: () => unknown) => refusalsOf(work).map(({ code, field }) => [code, field]);

describe("a red flag", () => {
  it("handed to nobody heads every page until somebody has it, and is open until what was done is recorded", () => {
    using db = clinic();
    const { flagId } = raise(db, { of: "1" });
    expect(listUnhanded(db)).toEqual([
      {
        flagId,
        patientId: "patient-1",
        familyName: "Brackenfold",
        givenName: "Ottoline",
        level: "same day",
        says: "fever",
        on: "2026-08-17",
        time: "14:05",
      },
    ]);
    expect(flagSteps(db)).toMatchObject([{ tubeId: "tube-1", ownerRole: "caller" }]);
    hand(db, flagId);
    expect(listUnhanded(db)).toEqual([]);
    expect(flagSteps(db)).toMatchObject([{ ownerRole: "physician" }]);
    close(db, flagId);
    expect(flagSteps(db)).toEqual([]);
    expect(viewFlag(db, { patientId: "patient-1", flagId })).toMatchObject({
      handed: [{ to: "Dr Example", time: "14:05" }],
      done: { by: "Dr Example", what: "seen" },
    });
  });

  it("handed over with its raising is one act: taking it back takes back both", () => {
    using db = clinic();
    const { actId, flagId } = raise(db, { when: "13:50", handedTo: "Dr Example", handedAt: "14:00" });
    expect(listUnhanded(db)).toEqual([]);
    expect(viewFlag(db, { patientId: "patient-1", flagId }).handed).toMatchObject([{ to: "Dr Example" }]);
    undoAct({ db, staff: people.nurse }, { actId: newId(), undoes: actId });
    expect(flagSteps(db)).toEqual([]);
    expect(codes(() => viewFlag(db, { patientId: "patient-1", flagId }))).toEqual([
      ["entry-unknown", undefined],
    ]);
  });

  it("goes on to another person: the last one has it", () => {
    using db = clinic();
    const { flagId } = raise(db, { when: "13:00" });
    hand(db, flagId, { at: "13:10" });
    hand(db, flagId, { to: "Dr Other", at: "13:40" });
    expect(viewFlag(db, { patientId: "patient-1", flagId }).handed.map(({ to, time }) => [to, time])).toEqual(
      [
        ["Dr Example", "13:10"],
        ["Dr Other", "13:40"],
      ],
    );
    expect(flagSteps(db)[0]?.why).toMatchObject([{}, { code: "flag-handed", args: { to: "Dr Other" } }]);
  });

  it("that nobody has comes back to the head of every page when the handing is taken back", () => {
    using db = clinic();
    const { flagId } = raise(db);
    const { actId } = hand(db, flagId);
    undoAct({ db, staff: people.nurse }, { actId: newId(), undoes: actId });
    expect(unhanded(db)).toEqual([["fever", "14:05"]]);
  });

  it("several stand by when they were told, the oldest first, whoever's they are", () => {
    using db = clinic();
    raise(db, { row: "dry", when: "14:00" });
    raise(db, { row: "", says: "string hangs out", level: "same day", when: "13:00" }, "patient-2");
    raise(db, { when: "yesterday 23:00" }, "patient-2");
    expect(unhanded(db)).toEqual([
      ["fever", "23:00"],
      ["string hangs out", "13:00"],
      ["dry", "14:00"],
    ]);
  });

  it("sent twice is raised once", () => {
    using db = clinic();
    const once = about("patient-1", { row: "fever", handedTo: "Dr Example" });
    expect(raiseFlag(caller(db), once)).toEqual(raiseFlag(caller(db), once));
    expect(flagSteps(db)).toHaveLength(1);
  });

  it("is asked for by the index of steps by kind, since every page asks", () => {
    using db = clinic();
    const plan = db.sqlite
      .prepare(
        "explain query plan select * from open_steps where kind = 'red flag' and exists (select 1 from json_each(why) where value ->> 'code' = 'flag-not-handed')",
      )
      .all();
    expect(JSON.stringify(plan)).toContain("open_steps_by_kind");
  });

  it("of a tube that is out says since when, how old the tract is, and what the row says of it", () => {
    using db = clinic();
    recordAs(db, [{ ...command(fellOut({ on: "2026-08-17", at: "11:00" })), eventId: "out" }]);
    const { flagId } = raise(db);
    expect(viewFlag(db, { patientId: "patient-1", flagId }).tubes).toMatchObject([
      {
        id: "tube-1",
        out: "out for 3 hours; tract 3 days, punctured Fri 14 Aug 2026; Immature: the row's limit is 14 days. If access is lost now, it becomes a new puncture.",
      },
    ]);
  });
});

describe("nothing is written", () => {
  it("of another patient's red flag, of one that is closed, of a row that the table has not", () => {
    using db = clinic();
    const { flagId } = raise(db, {}, "patient-2");
    expect(codes(() => hand(db, flagId))).toEqual([["entry-unknown", undefined]]);
    const own = raise(db);
    expect(codes(() => hand(db, own.flagId, { at: "14:06" }))).toEqual([["time-in-future", "at"]]);
    close(db, own.flagId);
    expect(codes(() => hand(db, own.flagId))).toEqual([["flag-not-open", undefined]]);
    expect(codes(() => raise(db, { row: "a row of nobody" }))).toEqual([["choice-unknown", "row"]]);
    expect(unhanded(db)).toEqual([["fever", "14:05"]]);
  });
});
