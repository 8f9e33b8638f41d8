import { describe, expect, it } from "vitest";
import { readingsOfTube } from "#db/queries/readings.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { recordDiary } from "#server/output/record-diary.ts";
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

const twoDays: Texts = {
  flushEach: "10",
  reportedBy: "patient",
  when1: "1 jun 2026 22:00",
  drained1: "40",
  when2: "8:00",
  drained2: "35",
  when3: "22:00",
  drained3: "2 oz",
  when4: "3 jun 2026 00:00",
  drained4: "12",
  flush4: "none",
};

describe("a diary", () => {
  it("is logged as one act, a row of the log each, and counts as readings do", () => {
    const { db, tubeId } = drain();
    using _closing = db;
    const { readingIds } = recordDiary(caller(db), { ...about(tubeId), texts: twoDays });
    expect(readingIds).toHaveLength(4);
    const rows = readingsOfTube(db, tubeId);
    expect(rows.map(({ id }) => id).toSorted()).toEqual([...readingIds].toSorted());
    expect(new Set(rows.map(({ actId, recordedBy }) => `${actId} ${recordedBy}`)).size).toBe(1);
    expect(rows.map(({ grossUl }) => grossUl)).toEqual([40_000, 35_000, 59_147, 12_000]);
    const { days, problems } = viewOutput(db, tubeId).output;
    expect(problems).toEqual([]);
    // 40 - 10 over 12 h of which all 12 h lie on 1 June until 22:00, and 25 over ten hours of which two: 30 + 5; the rest on 2 June.
    expect(days.slice(0, 2).map(({ day, net }) => [day, net.kind === "known" && net.ul])).toEqual([
      ["2026-06-01", 35_000],
      ["2026-06-02", 20_000 + 49_147 + 12_000],
    ]);
  });

  it("sent twice is logged once, and undone as one act", () => {
    const { db, tubeId } = drain();
    using _closing = db;
    const input = { ...about(tubeId), texts: twoDays };
    const first = recordDiary(caller(db), input);
    expect(recordDiary(caller(db), input)).toEqual(first);
    expect(readingsOfTube(db, tubeId)).toHaveLength(4);
    expect(undoAct({ db, staff: people.caller }, { actId: newId(), undoes: input.actId })).toEqual({
      undone: 4,
    });
    expect(viewOutput(db, tubeId).readings).toEqual([]);
  });

  it("keeps of each row its own leak and what else went in", () => {
    const { db, tubeId } = drain();
    using _closing = db;
    const texts = { ...twoDays, leak: "none", leak2: "damp", otherIn3: "contrast 20" };
    recordDiary(caller(db), { ...about(tubeId), texts });
    const logged = viewOutput(db, tubeId)
      .readings.map(({ reading }) => reading)
      .toSorted((a, b) => a.to - b.to);
    expect(logged.map(({ leak, otherIn }) => [leak, otherIn])).toEqual([
      ["none", []],
      ["damp", []],
      ["none", [{ fluid: "contrast", ul: 20_000 }]],
      ["none", []],
    ]);
  });

  it("with one row to mend logs none, and names the cell", () => {
    const { db, tubeId } = drain();
    using _closing = db;
    const texts = { ...twoDays, leak1: "a bit", otherIn2: "20", drained3: "half a bag", when4: "soon" };
    expect(refusalsOf(() => recordDiary(caller(db), { ...about(tubeId), texts }))).toMatchObject([
      { field: "leak1", code: "word-unknown" },
      { field: "otherIn2", code: "fluids-not-understood" },
      { field: "drained3", code: "volume-by-vessel" },
      { field: "when4", code: "day-not-understood" },
    ]);
    expect(readingsOfTube(db, tubeId)).toEqual([]);
  });

  it("of a ureteral stent is refused: it has no output", () => {
    const { db, tubeId } = withTube({ kind: "stent l", size: "6 f", when: "1 jun 2026" });
    using _closing = db;
    expect(refusalsOf(() => recordDiary(caller(db), { ...about(tubeId), texts: twoDays }))).toEqual([
      { code: "no-output" },
    ]);
  });
});
