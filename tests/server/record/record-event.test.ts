import { describe, expect, it } from "vitest";
import { eventsOfPatient } from "#db/queries/events.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { registerPatient } from "#server/patients/register-patient.ts";
import { viewPatient } from "#server/patients/view-patient.ts";
import { openAmendment } from "#server/record/open-amendment.ts";
import { recordAmendment } from "#server/record/record-amendment.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { voidEntry } from "#server/record/void-entry.ts";
import { viewTube } from "#server/tubes/view-tube.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { people } from "#tests/support/database.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";
import { refusalsOf } from "#tests/support/refusal.ts";

const LATEST = Number.MAX_SAFE_INTEGER;
const nurse = (db: Database) => ({ db, staff: people.nurse });

const record = (db: Database, form: FormKind, texts: Texts, tubeId?: string) =>
  recordEvent(nurse(db), form, {
    actId: newId(),
    lastSeen: LATEST,
    patientId: "patient-1",
    texts,
    ...(tubeId && { tubeId }),
  });

const place = (db: Database, texts: Texts = {}): string =>
  record(db, "placed", {
    kind: "pcn",
    side: "l",
    size: "8 f",
    when: "1 jun 2026",
    takes: ".035 in",
    ...texts,
  }).tubeId ?? "";

describe("recording by typed texts", () => {
  it("opens a record from five fields; what was not typed is unknown", () => {
    using db = clinicWithPatient();
    const { tube } = viewTube(
      db,
      record(db, "placed", { kind: "neph", side: "r", size: "8f", when: "1 jun 2026" }).tubeId ?? "",
    );
    expect(tube).toMatchObject({
      kind: "nephrostomy",
      side: { certainty: "confirmed", value: "right" },
      inside: { takes: { certainty: "unknown" }, bores: [], endHole: { certainty: "unknown" } },
      plan: null,
    });
  });

  it("hard case 12: confirming the size leaves the bore unknown", () => {
    using db = clinicWithPatient();
    const tubeId = place(db, { size: "?", takes: "" });
    record(db, "facts noted", { size: "8 f", when: "2 jun 2026" }, tubeId);
    const { tube } = viewTube(db, tubeId);
    expect(tube.size).toMatchObject({ certainty: "confirmed" });
    expect(tube.inside).toEqual({
      takes: { certainty: "unknown" },
      bores: [],
      endHole: { certainty: "unknown" },
    });
  });

  it("a planned exchange keeps what was seen of the wire in both tubes", () => {
    using db = clinicWithPatient();
    const tubeId = place(db);
    record(
      db,
      "exchange planned",
      { wire: ".038 in", size: "10 f", takes: ".038 in", on: "+3", kind: "pcn", reason: "2" },
      tubeId,
    );
    const planned = viewTube(db, tubeId).tube.plannedExchange;
    expect(planned?.reason).toBe("another wire is at hand");
    expect(planned?.checkedOn).toMatchObject({ takes: { certainty: "confirmed" }, concerns: [] });
    expect(planned?.seen).toEqual([
      "tube in place; by size; does not pass; label",
      "tube in place; by state; in doubt; past latest date",
      "tube to come; by size; passes; label",
      "wire length; cannot tell; length of the wire; full length of the tube in place; external length of the tube in place; length of what goes over the wire",
      "step; within the usual step",
      "tract; mature",
    ]);
  });

  it("a plan is asked why it goes on where the row asks, once until a fact of the tube changes", () => {
    using db = clinicWithPatient();
    const tubeId = place(db);
    const plan = { wire: ".038 in", size: "10 f", takes: ".038 in", kind: "pcn" };
    const planned = (texts: Texts) =>
      refusalsOf(() => record(db, "exchange planned", { ...plan, ...texts }, tubeId));
    expect(planned({})).toMatchObject([{ code: "plan-reason-missing", field: "reason" }]);
    expect(planned({ reason: "1" })).toEqual([]);
    expect(planned({ on: "+5" })).toEqual([]);
    expect(viewTube(db, tubeId).tube.plannedExchange?.reason).toBe("the operator has seen it and goes on");
    record(db, "facts noted", { fullLength: "25" }, tubeId);
    expect(planned({ on: "+6" })).toMatchObject([{ code: "plan-reason-missing" }]);
  });

  it.each<[name: string, form: FormKind, texts: Texts, code: string, field: string]>([
    ["a date in the future", "exchanged", { when: "+3" }, "day-in-future", "when"],
    ["800 F", "exchanged", { when: "2 jun 2026", size: "800 F" }, "length-absurd", "size"],
    ["8,5 without a unit", "exchanged", { when: "2 jun 2026", size: "8,5" }, "length-needs-unit", "size"],
    [
      "0.035 alone for a wire",
      "exchange planned",
      { wire: "0.035", kind: "pcn" },
      "length-needs-unit",
      "wire",
    ],
    [
      "a note of 3,000 letters",
      "exchanged",
      { when: "2 jun 2026", note: "x".repeat(3000) },
      "text-too-long",
      "note",
    ],
  ])("%s is refused beside its field and nothing is written", (_name, form, texts, code, field) => {
    using db = clinicWithPatient();
    const tubeId = place(db);
    expect(refusalsOf(() => record(db, form, texts, tubeId))).toMatchObject([{ code, field }]);
    expect(eventsOfPatient(db, "patient-1")).toHaveLength(1);
  });

  it("8,5 F with its unit is understood", () => {
    using db = clinicWithPatient();
    const tubeId = place(db);
    record(db, "exchanged", { when: "2 jun 2026", size: "8,5 F" }, tubeId);
    expect(viewTube(db, tubeId).tube.size).toEqual({ certainty: "confirmed", value: 4_250_000 });
  });

  it("an exchange before the placement is refused", () => {
    using db = clinicWithPatient();
    const tubeId = place(db);
    expect(refusalsOf(() => record(db, "exchanged", { when: "1 may 2026" }, tubeId))).toMatchObject([
      { code: "event-before-opening" },
    ]);
  });

  it("an unknown patient and a tube of nobody are refused", () => {
    using db = clinicWithPatient();
    const said = { actId: newId(), lastSeen: 0, texts: {} };
    expect(refusalsOf(() => recordEvent(nurse(db), "died", { ...said, patientId: "nobody" }))).toMatchObject([
      { code: "patient-unknown" },
    ]);
    expect(refusalsOf(() => record(db, "exchanged", {}, "no-tube"))).toMatchObject([
      { code: "tube-unknown" },
    ]);
  });

  it("right-to-left text and a script tag are kept as typed", () => {
    using db = clinicWithPatient();
    const tubeId = place(db);
    const note = "<script>alert(1)</script> \u05e9\u05dc\u05d5\u05dd";
    record(db, "facts noted", { size: "8 f", note, when: "2 jun 2026" }, tubeId);
    expect(eventsOfPatient(db, "patient-1").at(-1)?.row.payload).toMatchObject({ note });
  });
});

describe("correcting an entry", () => {
  it("opens with everything that was typed, so that changing one field loses none", () => {
    using db = clinicWithPatient();
    const tubeId = place(db, { cavity: "upper pole" });
    const [opened] = eventsOfPatient(db, "patient-1");
    const asked = { patientId: "patient-1", eventId: opened?.row.id ?? "" };
    const { texts } = openAmendment(db, asked);
    const typed = { ...texts, size: "10 f", amendedBecause: "read wrongly" };
    recordAmendment(nurse(db), { ...asked, actId: newId(), lastSeen: LATEST, texts: typed });
    const { tube } = viewTube(db, tubeId);
    expect(tube.size).toMatchObject({ value: 5_000_000 });
    expect(tube.cavity).toBe("upper pole");
    expect(tube.inside.takes).toMatchObject({ certainty: "confirmed" });
    expect(tube.catheter.since.earliest).toBe("2026-06-01");
    expect(openAmendment(db, asked).texts.size).toBe("10 f");
  });
});

describe("registering a patient", () => {
  const details = {
    familyName: "Applewhistle",
    givenName: "Cuthbert",
    birthOn: "?",
    number: "000815",
    issuer: "clinic",
  };
  const register = (db: Database, texts: Texts) => registerPatient(nurse(db), { actId: newId(), texts });

  it("keeps leading zeros of a record number, and refuses a number that another patient has", () => {
    using db = clinicWithPatient();
    const { patientId } = register(db, details);
    expect(patientId).not.toBe("");
    expect(refusalsOf(() => register(db, { ...details, familyName: "Other" }))).toMatchObject([
      { code: "number-taken", field: "number" },
    ]);
    expect(refusalsOf(() => register(db, { ...details, number: "815" }))).toEqual([]);
  });

  it("refuses a name of 500 characters and says the limit", () => {
    using db = clinicWithPatient();
    expect(refusalsOf(() => register(db, { ...details, familyName: "x".repeat(500) }))).toMatchObject([
      { code: "text-too-long", field: "familyName" },
    ]);
  });
});

it("a wire that is only about that size stays in doubt once it is saved", () => {
  using db = clinicWithPatient();
  const tubeId = place(db);
  record(db, "exchange planned", { wire: "~.035 in", takes: ".038 in", kind: "pcn" }, tubeId);
  expect(viewTube(db, tubeId).tube.plannedExchange?.seen).toContain("tube in place; by size; doubt; label");
});

it("an entry on the wrong patient leaves in the story only that it was voided", () => {
  using db = clinicWithPatient();
  const tubeId = place(db);
  const { eventIds } = record(
    db,
    "facts noted",
    { size: "8 f", note: "of somebody else", when: "2 jun 2026" },
    tubeId,
  );
  const input = { actId: newId(), patientId: "patient-1", eventId: eventIds[0] ?? "", lastSeen: LATEST };
  voidEntry(nurse(db), { ...input, texts: { reason: "mixed up", wrongPatient: "yes" } });
  const { story } = viewPatient(db, "patient-1");
  expect(story[0]).toMatchObject({ standing: "wrong patient", payload: null, reason: null, tubes: [] });
  expect(JSON.stringify(story)).not.toContain("somebody else");
});

describe("sides reconciled", () => {
  const sidesOf = (db: Database) => viewPatient(db, "patient-1").state.tubes.map(({ side }) => side);
  const sides = (...words: readonly string[]) => words.map((value) => ({ certainty: "confirmed", value }));

  it("hard case 23: both tubes in one act, by the fields of their numbers; undone, both stand as they stood", () => {
    using db = clinicWithPatient();
    place(db);
    place(db, { side: "r" });
    record(db, "reconcile asked", { about: "sides", says: "the report says right" });
    const before = viewPatient(db, "patient-1").steps;
    const { actId } = record(db, "reconciled", { about: "sides", how: "films seen", side1: "r", side2: "l" });
    expect(sidesOf(db)).toEqual(sides("right", "left"));
    expect(viewPatient(db, "patient-1").steps.map(({ step }) => step.kind)).not.toContain("reconcile");
    undoAct(nurse(db), { actId: newId(), undoes: actId });
    expect(sidesOf(db)).toEqual(sides("left", "right"));
    expect(viewPatient(db, "patient-1").steps).toEqual(before);
  });
});

describe("hard case 22: urology took it out, by telephone", () => {
  it("stands on the page of each tube that may be meant until the removal of one, and again when that is undone", () => {
    using db = clinicWithPatient();
    const [stent, nephrostomy] = [place(db, { kind: "jj l", side: "" }), place(db)];
    const right = place(db, { side: "r" });
    record(db, "reported out", { toldBy: "urology", when: "yesterday" });
    const open = (tubeId: string) => viewTube(db, tubeId).mayBeOut.length;
    expect([stent, nephrostomy, right].map(open)).toEqual([1, 1, 0]);
    expect(viewPatient(db, "patient-1").steps.map(({ step }) => step.kind)).toContain("which tube out");

    const removal = { whole: "?", when: "yesterday", toldBy: "urology" };
    const { actId } = record(db, "removed", removal, stent);
    expect([stent, nephrostomy].map(open)).toEqual([0, 0]);
    expect(viewTube(db, stent).tube.status).toBe("removal not confirmed");
    undoAct(nurse(db), { actId: newId(), undoes: actId });
    expect([stent, nephrostomy].map(open)).toEqual([1, 1]);
  });
});
