import { describe, expect, it } from "vitest";
import { eventsOfPatient } from "#db/queries/events.ts";
import { patientById, updatePatient } from "#db/queries/patients.ts";
import { projectionOf } from "#db/queries/projections.ts";
import { addReading } from "#db/queries/readings.ts";
import { patientChanges } from "#db/schema/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { newId } from "#server/ids.ts";
import { voidReading } from "#server/output/record-reading.ts";
import { correctPatient } from "#server/patients/correct-patient.ts";
import { viewPatient } from "#server/patients/view-patient.ts";
import { joinRecords } from "#server/record/join-records.ts";
import { openAmendment } from "#server/record/open-amendment.ts";
import { rebuildAll } from "#server/record/rebuild.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { voidEntry } from "#server/record/void-entry.ts";
import { viewTube } from "#server/tubes/view-tube.ts";
import { instant, zone } from "#shared/day/instant.ts";
import { reading } from "#tests/factories/reading.ts";
import { people } from "#tests/support/database.ts";
import {
  checked,
  died,
  exchanged,
  fellOut,
  placed,
  reconcileAsked,
  voided,
} from "#tests/support/factories.ts";
import { addInventedPatient, clinicWithPatient, recordAs } from "#tests/support/patient.ts";
import { refusalsOf } from "#tests/support/refusal.ts";
import { command } from "#tests/support/told.ts";

const as = (eventId: string, entry: Parameters<typeof command>[0]) => ({ ...command(entry), eventId });
const nurse = (db: Database) => ({ db, staff: people.nurse });

/** One person under two numbers: a nephrostomy on the left in one record, one on the right in the other; a third patient. */
function twoRecords(): Database & Disposable {
  const db = clinicWithPatient();
  addInventedPatient(db, "patient-2", "000418");
  addInventedPatient(db, "patient-3", "000419");
  recordAs(db, [
    as("a1", placed({ on: "2026-05-29" })),
    as("a2", reconcileAsked({ on: "2026-06-01", about: "two records of one patient" })),
  ]);
  recordAs(
    db,
    [
      as("b1", placed({ tube: "tube-9", side: "right", on: "2026-06-02" })),
      as("b2", exchanged({ tube: "tube-9", on: "2026-08-14" })),
    ],
    "patient-2",
  );
  return db;
}

const join = (db: Database, otherId = "patient-2", patientId = "patient-1") =>
  joinRecords(nurse(db), { actId: newId(), patientId, otherId, texts: { how: "both letters read" } });
const undo = (db: Database, undoes: string) => undoAct(nurse(db), { actId: newId(), undoes });
const tubesOf = (db: Database, id: string) => projectionOf(db, id).tubes.map((tube) => tube.id);
const all = (db: Database) => ["patient-1", "patient-2", "patient-3"].map((id) => projectionOf(db, id));
const codes = (work: () => unknown) => refusalsOf(work).map(({ code }) => code);

describe("hard case 23: one patient under two numbers", () => {
  it("joined, one record holds every tube with its steps, and the other none", () => {
    using db = twoRecords();
    const before = all(db);
    join(db);
    expect(tubesOf(db, "patient-1")).toEqual(["tube-1", "tube-9"]);
    expect(projectionOf(db, "patient-2")).toMatchObject({ tubes: [], steps: [] });
    const dated =
      (id: string) =>
      ({ tubeId, ...step }: { tubeId: string | null; kind: string }) =>
        // The call is one for both tubes.
        tubeId === id && step.kind !== "call" ? [{ tubeId, ...step, patientId: "" }] : [];
    const steps = projectionOf(db, "patient-1").steps;
    expect(steps.flatMap(dated("tube-9"))).toEqual(before[1]?.steps.flatMap(dated("tube-9")));
    expect(steps.flatMap(dated("tube-1"))).toEqual(before[0]?.steps.flatMap(dated("tube-1")));
    expect(steps.map(({ kind }) => kind)).not.toContain("reconcile");
    const { state, story, joined } = viewPatient(db, "patient-1");
    expect(state.tubes.map(({ id, number }) => [id, number])).toEqual([
      ["tube-1", 1],
      ["tube-9", 2],
    ]);
    expect(story.map(({ kind }) => kind)).toEqual([
      "records joined",
      "exchanged",
      "placed",
      "reconcile asked",
      "placed",
    ]);
    expect(joined.from.map(({ identifiers }) => identifiers[0]?.value)).toEqual(["000418"]);
    expect(viewPatient(db, "patient-2")).toMatchObject({ story: [], joined: { into: { id: "patient-1" } } });
    expect(viewTube(db, "tube-9").patient.id).toBe("patient-1");
  });

  it("its numbers stay its own, and what stood of it is kept", () => {
    using db = twoRecords();
    const { actId } = join(db);
    expect(viewPatient(db, "patient-2").patient.identifiers.map(({ value }) => value)).toEqual(["000418"]);
    expect(db.orm.select().from(patientChanges).all()).toMatchObject([
      { patientId: "patient-2", actId, before: { joinedInto: null }, after: { joinedInto: "patient-1" } },
    ]);
  });

  it("goes on as one: entries of both tubes, corrections of what the other said, undo of an act from before", () => {
    using db = twoRecords();
    const exchangeAct = eventsOfPatient(db, "patient-2").at(-1)?.row.actId ?? "";
    join(db);
    recordAs(db, [as("a3", checked({ tube: "tube-9", on: "2026-08-20" })), as("a4", voided("b2"))]);
    expect(viewTube(db, "tube-9").tube.catheter.since.earliest).toBe("2026-06-02");
    recordAs(db, [as("a5", voided("a4"))]);
    expect(viewTube(db, "tube-9").tube.catheter.since.earliest).toBe("2026-08-14");
    recordAs(db, [as("a6", voided("a3"))]);
    expect(undo(db, exchangeAct)).toEqual({ undone: 2 });
    expect(tubesOf(db, "patient-1")).toEqual(["tube-1"]);
  });

  it("an entry from before is corrected with what was typed then", () => {
    using db = twoRecords();
    const texts = { kind: "pcn r", size: "8 f", when: "2 jun 2026" };
    recordEvent(nurse(db), "placed", {
      actId: newId(),
      patientId: "patient-3",
      lastSeen: 0,
      texts,
    });
    join(db, "patient-3");
    const eventId = eventsOfPatient(db, "patient-3")[0]?.row.id ?? "";
    expect(openAmendment(db, { patientId: "patient-1", eventId }).texts).toMatchObject({ size: "8 f" });
  });

  it("undone, everything is exactly as it was, and each goes on by itself", () => {
    using db = twoRecords();
    const before = all(db);
    const { actId } = join(db);
    expect(undo(db, actId)).toEqual({ undone: 1 });
    expect(all(db)).toEqual(before);
    expect(patientById(db, "patient-2")?.joinedInto).toBeNull();
    recordAs(db, [as("b3", fellOut({ tube: "tube-9", on: "2026-08-20" }))], "patient-2");
    recordAs(db, [as("a3", checked({ on: "2026-08-20" }))]);
    const second = join(db);
    expect(viewTube(db, "tube-9").tube.status).toBe("out, undecided");
    undo(db, second.actId);
    expect(tubesOf(db, "patient-2")).toEqual(["tube-9"]);
  });

  it("voided with a reason, it is the same as undone; undoing that joins nothing by the way", () => {
    using db = twoRecords();
    const { eventIds } = join(db);
    const actId = newId();
    voidEntry(nurse(db), {
      actId,
      patientId: "patient-1",
      eventId: eventIds[0] ?? "",
      lastSeen: 99,
      texts: { reason: "a namesake" },
    });
    expect(tubesOf(db, "patient-2")).toEqual(["tube-9"]);
    expect(codes(() => undo(db, actId))).toEqual(["join-anew"]);
  });

  it.each([
    ["an entry of the other's tube", checked({ tube: "tube-9", on: "2026-08-20" }), "checked"],
    ["a death", died({ on: "2026-08-20" }), "died"],
    ["a correction of the other's entry", voided("b2"), "amended"],
  ])("is not undone while %s rests on it", (_name, later, entries) => {
    using db = twoRecords();
    const { actId } = join(db);
    recordAs(db, [as("later", later)]);
    expect(refusalsOf(() => undo(db, actId))).toMatchObject([{ code: "rests-on-join", args: { entries } }]);
    expect(tubesOf(db, "patient-1")).toContain("tube-9");
    recordAs(db, [as("back", voided("later"))]);
    undo(db, actId);
    expect(tubesOf(db, "patient-2")).toEqual(["tube-9"]);
  });

  it("a rebuild gives the same rows", () => {
    using db = twoRecords();
    join(db);
    const before = all(db);
    rebuildAll(db);
    expect(all(db)).toEqual(before);
  });
});

describe("a record that was joined takes nothing more", () => {
  it("says under which number it goes on", () => {
    using db = twoRecords();
    join(db);
    const where = [{ code: "record-joined", args: { number: "clinic 000417" } }];
    const toOther = { actId: newId(), patientId: "patient-2", lastSeen: 99 };
    const doing = nurse(db);
    expect(refusalsOf(() => recordEvent(doing, "died", { ...toOther, texts: {} }))).toMatchObject(where);
    expect(refusalsOf(() => recordAs(db, [as("x", died())], "patient-2"))).toMatchObject(where);
    expect(
      refusalsOf(() =>
        correctPatient(doing, { actId: newId(), patientId: "patient-2", texts: {}, lastUpdatedAt: 0 }),
      ),
    ).toMatchObject(where);
  });
});

describe("what is not joined", () => {
  it.each([
    ["a record with itself", "patient-1", "patient-1", "joins-itself"],
    ["one that is joined already", "patient-2", "patient-3", "joined-already"],
    ["into one that is joined", "patient-3", "patient-2", "joined-already"],
    ["one into which another was joined", "patient-1", "patient-3", "others-joined"],
    ["one that is not there", "nobody", "patient-3", "patient-unknown"],
  ])("%s", (_name, otherId, patientId, code) => {
    using db = twoRecords();
    join(db);
    expect(codes(() => join(db, otherId, patientId))).toEqual([code]);
  });

  it("one whose registration was withdrawn", () => {
    using db = twoRecords();
    inTransaction(db, (tx) => {
      const row = patientById(tx, "patient-3");
      if (row !== undefined) updatePatient(tx, { ...row, withdrawnAt: instant(0) });
    });
    expect(codes(() => join(db, "patient-3"))).toEqual(["patient-unknown"]);
  });

  it("without a word how it was found", () => {
    using db = twoRecords();
    const input = { actId: newId(), patientId: "patient-1", otherId: "patient-2", texts: {} };
    expect(refusalsOf(() => joinRecords(nurse(db), input))).toMatchObject([
      { code: "text-missing", field: "how" },
    ]);
  });
});

describe("what both records say and cannot both be true", () => {
  it("is a step of the one that stays, not a refusal", () => {
    using db = twoRecords();
    recordAs(db, [as("a3", died({ on: "2026-07-01" }))]);
    join(db);
    expect(projectionOf(db, "patient-1").steps.map(({ kind }) => kind)).toContain("contradiction");
  });
});

describe("readings", () => {
  it("stay under their tube, and one from before is voided in the record that it belongs to now", () => {
    using db = twoRecords();
    const actId = newId();
    inTransaction(db, (tx) => {
      tx.sqlite
        .prepare(
          "insert into acts select ?, staff_id, command, input_hash, result, recorded_at from acts limit 1",
        )
        .run(actId);
      addReading(tx, {
        id: "reading-1",
        patientId: "patient-2",
        tubeId: "tube-9",
        actId,
        fromAt: null,
        toAt: instant(Date.UTC(2026, 7, 20)),
        zone: zone("Europe/London"),
        grossUl: null,
        basis: "gross",
        flushGivenUl: null,
        payload: { reading: reading({ id: "reading-1", tubeId: "tube-9" }), reason: null },
        replaces: null,
        voided: false,
        recordedAt: instant(0),
        recordedBy: people.nurse.id,
      });
    });
    join(db);
    const voiding = {
      patientId: "patient-1",
      readingId: "reading-1",
      lastSeen: 0,
      texts: { reason: "twice" },
    };
    expect(voidReading(nurse(db), { actId: newId(), ...voiding }).readingId).toBe("reading-1");
    const other = { ...voiding, patientId: "patient-3" };
    expect(codes(() => voidReading(nurse(db), { actId: newId(), ...other }))).toEqual(["entry-unknown"]);
  });
});
