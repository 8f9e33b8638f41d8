import { describe, expect, it } from "vitest";
import { projectionOf } from "#db/queries/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { correctReading, recordReading, voidReading } from "#server/output/record-reading.ts";
import { rebuildAll } from "#server/record/rebuild.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { undoAct } from "#server/record/undo-act.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { Why } from "#shared/step/step.ts";
import { people } from "#tests/support/database.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";
import { refusalsOf } from "#tests/support/refusal.ts";

const about = (tubeId: string) => ({ actId: newId(), lastSeen: 99, patientId: "patient-1", tubeId });
type Clinic = { readonly db: Database & Disposable; readonly tubeId: string };

function nephrostomy(): Clinic {
  const db = clinicWithPatient();
  const texts = { kind: "pcn l", size: "8 f", when: "1 may 2026", plan: "", flushOrder: "none" };
  const input = { actId: newId(), lastSeen: 0, patientId: "patient-1", texts };
  return { db, tubeId: recordEvent({ db, staff: people.nurse }, "placed", input).tubeId ?? "" };
}

const log = ({ db, tubeId }: Clinic, texts: Texts) =>
  recordReading({ db, staff: people.caller }, { ...about(tubeId), texts });
const dry = { drained: "0", from: "2 jun 2026 00:00", to: "2 jun 2026 07:00" };

const record = ({ db, tubeId }: Clinic, form: FormKind, texts: Texts) =>
  recordEvent({ db, staff: people.physician }, form, { ...about(tubeId), texts });

const linesOf = ({ db }: Clinic): readonly Why[] =>
  projectionOf(db, "patient-1").steps.flatMap(({ kind, why }) =>
    kind === "alarm" ? (why as readonly Why[]) : [],
  );
const alarmOf = (clinic: Clinic): readonly string[] => linesOf(clinic).map(({ code }) => code);

describe("an alarm stands with the reading that raised it", () => {
  it("logging one raises it, correcting, voiding and undoing what was logged take it back", () => {
    const clinic = nephrostomy();
    using db = clinic.db;
    const doing = { db, staff: people.caller };
    const { readingId, actId } = log(clinic, dry);
    expect(alarmOf(clinic)).toEqual(["alarm-dry", "row-example"]);
    const texts = { ...dry, drained: "400", reason: "the bag was full" };
    const corrected = correctReading(doing, { ...about(clinic.tubeId), readingId, texts });
    expect(alarmOf(clinic)).toEqual([]);
    undoAct(doing, { actId: newId(), undoes: corrected.actId });
    expect(alarmOf(clinic)).toEqual(["alarm-dry", "row-example"]);
    voidReading(doing, { ...about(clinic.tubeId), readingId, texts: { reason: "another patient's" } });
    expect(alarmOf(clinic)).toEqual([]);
    const again = log(clinic, dry);
    expect(alarmOf(clinic)).toHaveLength(2);
    undoAct(doing, { actId: newId(), undoes: again.actId });
    expect(alarmOf(clinic)).toEqual([]);
    expect(actId).not.toBe(again.actId);
  });

  it("raises one alarm and no review, and a rebuild makes the same rows", () => {
    const clinic = nephrostomy();
    using db = clinic.db;
    log(clinic, dry);
    log(clinic, { drained: "0", from: "2 jun 2026 07:00", to: "2 jun 2026 15:00" });
    const stood = projectionOf(db, "patient-1");
    const kinds = stood.steps.map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind === "alarm")).toHaveLength(1);
    expect(kinds).not.toContain("review");
    rebuildAll(db);
    expect(projectionOf(db, "patient-1")).toEqual(stood);
  });
});

describe("a physician closes it", () => {
  it("with what was done; it stays closed until something new is logged; undone, it stands again", () => {
    const clinic = nephrostomy();
    using db = clinic.db;
    log(clinic, dry);
    const { actId } = record(clinic, "alarm closed", { done: "flushed and it ran", by: "Dr Example" });
    expect(alarmOf(clinic)).toEqual([]);
    log(clinic, { drained: "150", to: "2 jun 2026 09:00" });
    expect(alarmOf(clinic)).toEqual([]);
    log(clinic, { drained: "0", to: "2 jun 2026 15:00" });
    expect(alarmOf(clinic)).toEqual(["alarm-dry", "row-example"]);
    record(clinic, "alarm closed", { done: "sent to hospital", by: "Dr Example" });
    expect(alarmOf(clinic)).toEqual([]);
    undoAct({ db, staff: people.physician }, { actId: newId(), undoes: actId });
    // What lay before the newest spell that was answered was answered with it.
    expect(alarmOf(clinic)).toEqual([]);
  });

  it("does not answer unseen what was logged while somebody typed", () => {
    const clinic = nephrostomy();
    using _closing = clinic.db;
    log(clinic, dry);
    const [{ key, until }] = linesOf(clinic).map(({ args }) => args) as [Why["args"]];
    log(clinic, { drained: "150", to: "2 jun 2026 09:00", characters: "bloody" });
    record(clinic, "alarm closed", { answers: `${key}@${until}`, done: "unkinked", by: "Dr Example" });
    expect(alarmOf(clinic)).toEqual(["alarm-new-fluid", "row-example"]);
  });

  it("refuses where none stands, says what other thing was done, and never accepts nothing as usual", () => {
    const clinic = nephrostomy();
    using _closing = clinic.db;
    const close = (texts: Texts) => () => record(clinic, "alarm closed", { by: "Dr Example", ...texts });
    expect(refusalsOf(close({ done: "expected" }))).toMatchObject([{ code: "alarm-none", field: "answers" }]);
    log(clinic, dry);
    expect(refusalsOf(close({ done: "other" }))).toMatchObject([{ code: "text-missing", field: "note" }]);
    const accept = { row: "low", level: "0", until: "+30", acceptedBy: "Dr Example" };
    expect(refusalsOf(() => record(clinic, "usual level accepted", accept))).toMatchObject([
      { code: "usual-level-zero", field: "level" },
    ]);
  });

  it("case 38: accepts a level as usual, and the low days are answered", () => {
    const clinic = nephrostomy();
    using _closing = clinic.db;
    log(clinic, { drained: "60", from: "2 jun 2026 00:00", to: "3 jun 2026 00:00" });
    expect(alarmOf(clinic)).toEqual(["alarm-low", "row-example"]);
    record(clinic, "usual level accepted", {
      row: "low",
      level: "60",
      until: "+30",
      acceptedBy: "Dr Example",
    });
    expect(alarmOf(clinic)).toEqual([]);
  });
});
