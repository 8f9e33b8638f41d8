import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { stepsOf } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { raiseFlag } from "#server/calls/flag-act.ts";
import { recordTubeOut } from "#server/calls/tube-out-act.ts";
import { listUnhanded } from "#server/calls/unhanded-flags.ts";
import { viewTubeOut } from "#server/calls/view-tube-out.ts";
import { newId } from "#server/ids.ts";
import { viewPatient } from "#server/patients/view-patient.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { offerSlots } from "#server/visits/offer-slots.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { book, clinic, slot } from "#tests/support/booking-clinic.ts";
import { people } from "#tests/support/database.ts";
import { placed } from "#tests/support/factories.ts";
import { recordAs } from "#tests/support/patient.ts";
import { refusalsOf } from "#tests/support/refusal.ts";
import { command } from "#tests/support/told.ts";

/** Monday 2 November 2026, 14:05 in London. */
beforeEach(() => vi.useFakeTimers({ toFake: ["Date"], now: new Date("2026-11-02T14:05:00Z") }));
afterEach(() => vi.useRealTimers());

const caller = (db: Database) => ({ db, staff: people.caller });
const about = (texts: Texts) => ({
  actId: newId(),
  patientId: "patient-1",
  lastSeen: 99,
  texts: { tube: "2", out: "out", when: "11:00", handedTo: "nobody yet", ...texts },
});
const tellOut = (db: Database, texts: Texts = {}) => recordTubeOut(caller(db), about(texts));
const state = (db: Database) => viewPatient(db, "patient-1").state;
const kinds = (db: Database) => stepsOf(db, "patient-1").map(({ kind, tubeId }) => [kind, tubeId]);

/** Beside the left tube of 14 Aug a right nephrostomy of nine days. */
function withNineDays(): Database & Disposable {
  const db = clinic();
  recordAs(db, [
    { ...command(placed({ tube: "tube-9", side: "right", on: "2026-10-24", number: 2 })), eventId: "p9" },
  ]);
  return db;
}

describe("a nephrostomy out for three hours with a nine-day tract", () => {
  it("is one act: out, how the patient is, and the red flag; its visit turns urgent, with three slots", () => {
    using db = withNineDays();
    const said = tellOut(db, { temperature: "37.1", oldTube: "kept", whole: "yes", toldBy: "the son" });
    expect(said).toMatchObject({ tubeId: "tube-9", handed: false });
    expect(kinds(db)).toEqual(
      expect.arrayContaining([
        ["tube out", "tube-9"],
        ["red flag", "tube-9"],
      ]),
    );
    expect(state(db).redFlags).toMatchObject([
      { id: said.flagId, row: "out or partly out", level: "same day", tubeId: "tube-9", handed: null },
    ]);
    expect(state(db).clinical.temperature).toBeDefined();
    expect(listUnhanded(db).map(({ says }) => says)).toEqual(["out or partly out"]);
    const slots = offerSlots(db, { patientId: "patient-1", first: "tube-9" });
    expect(slots.urgent).toBe(true);
    expect(slots.offers).toHaveLength(3);
    expect(slots.tubes.map(({ out }) => out)).toEqual([
      "out for 3 hours; tract 9 days, punctured Sat 24 Oct 2026; Immature: the row's limit is 14 days. If access is lost now, it becomes a new puncture.",
    ]);
  });

  it("is shown with the rows of the table before anything is typed", () => {
    using db = withNineDays();
    const { context, bleeding } = viewTubeOut(db, { patientId: "patient-1" });
    expect(context.tubes[1]).toMatchObject({
      id: "tube-9",
      tract: { since: "2026-10-24", ages: { immatureUnder: 14, matureFrom: 28 } },
      rows: { out: { id: "nephrostomy" }, "part out": { id: "any, part out" } },
      flag: { id: "out or partly out" },
    });
    expect(bleeding?.rows.map((row) => row.class)).toEqual(["low", "high"]);
  });

  it("a visit that is booked for it turns urgent", () => {
    using db = clinic();
    vi.setSystemTime(new Date("2026-11-02T09:00:00Z"));
    book(db, slot);
    vi.setSystemTime(new Date("2026-11-02T14:05:00Z"));
    tellOut(db, { tube: "1" });
    expect(state(db).visits).toMatchObject([{ urgent: true }]);
  });

  it("all of it is taken back in one", () => {
    using db = withNineDays();
    const before = kinds(db);
    const { actId } = tellOut(db, { temperature: "37.1", bleeds: "some", handedTo: "Dr Example" });
    undoAct({ db, staff: people.nurse }, { actId: newId(), undoes: actId });
    expect(kinds(db)).toEqual(before);
    expect(state(db).redFlags).toEqual([]);
  });

  it("a red flag of it that a call has raised is not raised again: it is handed over", () => {
    using db = withNineDays();
    const told = { row: "out or partly out", of: "2", when: "13:00", handedTo: "nobody yet" };
    const { flagId } = raiseFlag(caller(db), {
      actId: newId(),
      patientId: "patient-1",
      lastSeen: 99,
      texts: told,
    });
    expect(tellOut(db, { handedTo: "Dr Example" })).toMatchObject({ flagId, handed: true });
    expect(state(db).redFlags).toMatchObject([{ id: flagId, handed: { to: "Dr Example" } }]);
  });
});

describe("nothing is written", () => {
  it.each<[string, Texts, string, string]>([
    ["of a tube that is out already", { when: "12:00" }, "tube-out-already", "tube"],
    ["of a time to come", { tube: "1", when: "15:00" }, "time-in-future", "when"],
    ["of a day before its placement", { tube: "1", when: "13 aug 2026" }, "out-before-placed", "when"],
  ])("%s", (_, texts, code, field) => {
    using db = withNineDays();
    tellOut(db);
    const before = state(db).lastSeq;
    expect(refusalsOf(() => tellOut(db, texts)).map((one) => [one.code, one.field])).toEqual([[code, field]]);
    expect(state(db).lastSeq).toBe(before);
  });
});
