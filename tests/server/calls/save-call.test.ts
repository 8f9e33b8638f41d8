import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { stepsOf } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { saveCall } from "#server/calls/save-call.ts";
import { viewCall } from "#server/calls/view-call.ts";
import { saveDraft } from "#server/drafts/save-draft.ts";
import { newId } from "#server/ids.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { undoAct } from "#server/record/undo-act.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { fold } from "#shared/tube/fold.ts";
import { people } from "#tests/support/database.ts";
import { conditionsNoted, placed, whereaboutsNoted } from "#tests/support/factories.ts";
import { clinicWithPatient, recordAs } from "#tests/support/patient.ts";
import { refusalsOf } from "#tests/support/refusal.ts";
import { command } from "#tests/support/told.ts";

/** Wednesday 19 August 2026, 9:00 in London; the nephrostomy is of Friday the 14th. */
const NOW = "2026-08-19T08:00:00Z";
beforeEach(() => vi.useFakeTimers({ toFake: ["Date"], now: new Date(NOW) }));
afterEach(() => vi.useRealTimers());

const doing = (db: Database) => ({ db, staff: people.caller });

function clinic(): Database & Disposable {
  const db = clinicWithPatient();
  recordAs(db, [{ ...command(placed()), eventId: "p1" }]);
  return db;
}

const save = (db: Database, texts: Texts, lastSeen = 99) =>
  saveCall(doing(db), { actId: newId(), patientId: "patient-1", lastSeen, texts });
const stateOf = (db: Database) => fold(loadRecord(db, "patient-1").events);
const codes = (work: () => unknown) => refusalsOf(work).map(({ code, field }) => [code, field]);
const reached = { outcome: "reached the patient" };

describe("a call is saved", () => {
  it("one that reached nobody: tried, and when it is tried again", () => {
    using db = clinic();
    save(db, { outcome: "voicemail", number: "555 0117" });
    expect(stateOf(db).calls.tries).toMatchObject([
      { outcome: "voicemail", number: "555 0117", time: "09:00", to: "the patient" },
    ]);
    expect(stepsOf(db, "patient-1").map(({ kind, dueOn }) => [kind, dueOn])).toContainEqual([
      "call",
      "2026-08-20",
    ]);
  });

  it("one without a word to report: what was answered is kept with its words, and nothing is opened", () => {
    using db = clinic();
    const { flags } = save(db, { ...reached, "ask-fever": "n", "ask-1-draining": "y", note: "Well." });
    expect(flags).toEqual([]);
    const event = loadRecord(db, "patient-1").events.at(-1);
    expect(event).toMatchObject({
      kind: "call attempted",
      payload: {
        answers: [
          { question: "fever", of: null, says: "no" },
          { question: "draining", of: { tube: "tube-1", number: 1 }, says: "yes" },
        ],
      },
    });
    expect(stateOf(db).redFlags).toEqual([]);
  });

  it("an answer opens its red flag, handed to a named person, in the same act; undone, all of it is gone", () => {
    using db = clinic();
    const saved = save(db, { ...reached, "ask-1-draining": "n", handedTo: "Dr Example" });
    expect(stateOf(db).redFlags).toMatchObject([
      { row: "dry", level: "same day", tubeId: "tube-1", handed: { to: "Dr Example", time: "09:00" } },
    ]);
    expect(saved.flags).toMatchObject([{ handed: true }]);
    undoAct(doing(db), { actId: newId(), undoes: saved.actId });
    expect(stateOf(db).redFlags).toEqual([]);
    expect(stateOf(db).calls.reached).toBeNull();
  });

  it("fever on chemotherapy is emergency services; nobody yet keeps it open with nobody", () => {
    using db = clinic();
    const chemo = conditionsNoted({ conditions: { chemotherapy: confirmed(true) } });
    recordAs(db, [{ ...command(chemo), eventId: "c1" }]);
    save(db, { ...reached, "ask-fever": "y", handedTo: "nobody yet" });
    expect(stateOf(db).redFlags).toMatchObject([
      { row: "fever and immune suppression", level: "emergency services", handed: null },
    ]);
  });

  it("the same act sent twice is one call", () => {
    using db = clinic();
    const once = { actId: newId(), patientId: "patient-1", lastSeen: 99, texts: { outcome: "no answer" } };
    expect(saveCall(doing(db), once)).toEqual(saveCall(doing(db), once));
    expect(stateOf(db).calls.tries).toHaveLength(1);
  });
});

describe("what is refused, and nothing of it saved", () => {
  it.each([
    [
      "answers though nobody was reached",
      { outcome: "no answer", "ask-fever": "n" },
      "answers-without-contact",
      "ask-fever",
    ],
    ["a red flag that nobody has", { ...reached, "ask-fever": "y" }, "flag-without-person", "handedTo"],
    [
      "a name where no flag was opened",
      { ...reached, handedTo: "Dr Example" },
      "handed-without-flag",
      "handedTo",
    ],
    ["a call back without a day", { outcome: "call back" }, "call-back-without-day", "backOn"],
    [
      "a time to ring back without a day",
      { outcome: "voicemail", backAt: "18:00" },
      "call-back-without-day",
      "backOn",
    ],
    ["letters in a number", { outcome: "no answer", number: "555 O117 home" }, "number-not-rung", "number"],
    ["no outcome", { note: "rang" }, "text-missing", "outcome"],
    ["a call in the future", { outcome: "no answer", when: "20 aug 2026 10:00" }, "day-in-future", "when"],
    ["an answer that nobody can give", { ...reached, "ask-fever": "maybe" }, "choice-unknown", "ask-fever"],
  ] as const)("%s", (_name, texts, code, field) => {
    using db = clinic();
    const before = loadRecord(db, "patient-1").events.length;
    expect(codes(() => save(db, texts))).toContainEqual([code, field]);
    expect(loadRecord(db, "patient-1").events).toHaveLength(before);
  });

  it("a second caller who saves an older page", () => {
    using db = clinic();
    const { lastSeen } = viewCall(doing(db), { patientId: "patient-1" });
    save(db, { outcome: "no answer" }, lastSeen);
    expect(codes(() => save(db, reached, lastSeen))).toEqual([["changed-meanwhile", undefined]]);
  });
});

describe("what a call is made with", () => {
  it("rings the ward about an inpatient", () => {
    using db = clinic();
    recordAs(db, [{ ...command(whereaboutsNoted({ on: "2026-08-18" })), eventId: "w1" }]);
    expect(viewCall(doing(db), { patientId: "patient-1" }).context).toMatchObject({
      to: "the ward",
      number: null,
    });
  });

  it("tells what somebody else typed and did not save, and not one's own", () => {
    using db = clinic();
    const content = { actId: newId(), texts: { note: "asks for a day" } };
    saveDraft(db, people.nurse, { form: "calls.saved", subject: "patient-1", content });
    expect(viewCall(doing(db), { patientId: "patient-1" }).othersDraft).toMatchObject({
      texts: { note: "asks for a day" },
    });
    const own = viewCall({ db, staff: people.nurse }, { patientId: "patient-1" });
    expect(own.othersDraft).toBeNull();
  });

  it("tells what was said when somebody was last reached", () => {
    using db = clinic();
    save(db, { ...reached, "ask-fever": "n", note: "Well." });
    save(db, { outcome: "no answer" });
    expect(viewCall(doing(db), { patientId: "patient-1" }).lastCall).toMatchObject({
      note: "Well.",
      answers: [{ question: "fever", says: "no" }],
    });
  });
});
