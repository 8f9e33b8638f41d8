import { describe, expect, it } from "vitest";
import { readingsOfTube } from "#db/queries/readings.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { correctReading, recordReading, voidReading } from "#server/output/record-reading.ts";
import { viewOutput } from "#server/output/view-output.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { undoAct } from "#server/record/undo-act.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { people } from "#tests/support/database.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";
import { refusalsOf } from "#tests/support/refusal.ts";

const caller = (db: Database) => ({ db, staff: people.caller });
const about = (tubeId: string) => ({ actId: newId(), lastSeen: 0, patientId: "patient-1", tubeId });

function withTube(texts: Texts): { db: Database & Disposable; tubeId: string } {
  const db = clinicWithPatient();
  const input = { actId: newId(), lastSeen: 0, patientId: "patient-1", texts: { plan: "", ...texts } };
  return { db, tubeId: recordEvent({ db, staff: people.nurse }, "placed", input).tubeId ?? "" };
}

const drain = () => withTube({ kind: "abscess drain", size: "8 f", when: "1 jun 2026 10:00" });

const log = (db: Database, tubeId: string, texts: Texts) =>
  recordReading(caller(db), { ...about(tubeId), texts });

const netOf = (db: Database, tubeId: string, day: string) =>
  viewOutput(db, tubeId).output.days.find((net) => net.day === day)?.net;

describe("the output log", () => {
  it("subtracts the flush that was given, over the time that it ran: 25 mL with 8 mL flush is 17", () => {
    const { db, tubeId } = drain();
    using _closing = db;
    log(db, tubeId, { drained: "25", flushGiven: "8", to: "2 jun 2026 00:00", from: "1 jun 2026 10:00" });
    expect(netOf(db, tubeId, "2026-06-01")).toMatchObject({ kind: "known", ul: 17_000 });
  });

  it("writes no tube and no step again that a reading leaves as they were; what it opens is added", () => {
    const { db, tubeId } = withTube({ kind: "pcn l", size: "8 f", when: "1 jun 2026 10:00" });
    using _closing = db;
    // The day on which a diary would be missing moves with every reading.
    const rows = (table: string) =>
      new Set(
        db.sqlite
          .prepare<[], string>(`select rowid || ' ' || id from ${table} where id not like '%:diary'`)
          .pluck()
          .all(),
      );
    const [tubes, steps] = [rows("tubes"), rows("open_steps")];
    const texts = { flushGiven: "none", from: "5 jun 2026 00:00", to: "6 jun 2026 00:00" };
    log(db, tubeId, { ...texts, drained: "900" });
    expect(rows("open_steps")).toEqual(steps);
    log(db, tubeId, { ...texts, drained: "60", from: "6 jun 2026 00:00", to: "7 jun 2026 00:00" });
    expect(rows("tubes")).toEqual(tubes);
    const now = rows("open_steps");
    expect([...steps].filter((row) => !now.has(row))).toEqual([]);
    expect(now.size).toBe(steps.size + 1);
  });

  it("a flush that is ordered and not recorded leaves the day untold", () => {
    const { db, tubeId } = drain();
    using _closing = db;
    log(db, tubeId, { drained: "25", flushGiven: "?", to: "2 jun 2026 00:00" });
    expect(netOf(db, tubeId, "2026-06-01")).toMatchObject({ kind: "cannot tell" });
  });

  it("with 'none' ordered for this tube, what is not recorded is not missed", () => {
    const { db, tubeId } = withTube({
      kind: "abscess drain",
      size: "8 f",
      when: "1 jun 2026 10:00",
      flushOrder: "none",
    });
    using _closing = db;
    log(db, tubeId, { drained: "25", flushGiven: "?", to: "2 jun 2026 00:00" });
    expect(netOf(db, tubeId, "2026-06-01")).toMatchObject({ kind: "known", ul: 25_000 });
  });

  it("a correction stands in the place of what it corrects; the log keeps both", () => {
    const { db, tubeId } = drain();
    using _closing = db;
    const { readingId } = log(db, tubeId, { drained: "250", flushGiven: "8", to: "2 jun 2026 00:00" });
    const texts = { drained: "25", flushGiven: "8", to: "2 jun 2026 00:00", reason: "a zero too many" };
    correctReading(caller(db), { ...about(tubeId), readingId, texts });
    expect(netOf(db, tubeId, "2026-06-01")).toMatchObject({ ul: 17_000 });
    expect(readingsOfTube(db, tubeId)).toHaveLength(2);
  });

  it("a voided reading counts no more, and undoing the act that logged it does the same", () => {
    const { db, tubeId } = drain();
    using _closing = db;
    const first = log(db, tubeId, { drained: "25", flushGiven: "8", to: "2 jun 2026 00:00" });
    voidReading(caller(db), {
      ...about(tubeId),
      readingId: first.readingId,
      texts: { reason: "another patient's", wrongPatient: "yes" },
    });
    const second = log(db, tubeId, { drained: "30", flushGiven: "8", to: "2 jun 2026 00:00" });
    undoAct({ db, staff: people.caller }, { actId: newId(), undoes: second.actId });
    expect(viewOutput(db, tubeId).readings).toEqual([]);
    expect(readingsOfTube(db, tubeId)).toHaveLength(4);
  });

  it("a ureteral stent has no output", () => {
    const { db, tubeId } = withTube({ kind: "stent l", size: "6 f", when: "1 jun 2026" });
    using _closing = db;
    expect(refusalsOf(() => log(db, tubeId, { drained: "25", flushGiven: "none" }))).toMatchObject([
      { code: "no-output" },
    ]);
  });

  it.each([
    ["a negative flush", { drained: "25", flushGiven: "-8" }, "flushGiven"],
    ["letters for a volume", { drained: "half a bag", flushGiven: "8" }, "drained"],
    ["an emptying in the future", { drained: "25", flushGiven: "8", to: "+2" }, "to"],
  ])("%s is refused beside its field", (_name, texts, field) => {
    const { db, tubeId } = drain();
    using _closing = db;
    expect(refusalsOf(() => log(db, tubeId, texts))).toMatchObject([{ field }]);
    expect(readingsOfTube(db, tubeId)).toEqual([]);
  });
});

describe("undoing", () => {
  it("a caller takes back what that caller recorded, and nothing of others", () => {
    const { db, tubeId } = drain();
    using _closing = db;
    const input = { ...about(tubeId), texts: { when: "2 jun 2026", size: "10 f" } };
    const exchange = recordEvent({ db, staff: people.nurse }, "exchanged", { ...input, lastSeen: 1 });
    const undoing = { actId: newId(), undoes: exchange.actId };
    expect(refusalsOf(() => undoAct({ db, staff: people.caller }, undoing))).toMatchObject([
      { code: "not-allowed" },
    ]);
    expect(undoAct({ db, staff: people.physician }, undoing)).toEqual({ undone: 1 });
  });
});
