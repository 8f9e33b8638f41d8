import { describe, expect, it } from "vitest";
import { readingsOfTube } from "#db/queries/readings.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { readingContext } from "#server/output/reading-context.ts";
import { recordDiary } from "#server/output/record-diary.ts";
import { correctReading, recordReading } from "#server/output/record-reading.ts";
import { viewOutput } from "#server/output/view-output.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { viewTube } from "#server/tubes/view-tube.ts";
import { instant } from "#shared/day/instant.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { readingBeside } from "#shared/record/output/reading-beside.ts";
import { people } from "#tests/support/database.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";

const caller = (db: Database) => ({ db, staff: people.caller });
const about = (tubeId: string) => ({ actId: newId(), lastSeen: 0, patientId: "patient-1", tubeId });

function withDrain(): { db: Database & Disposable; tubeId: string } {
  const db = clinicWithPatient();
  const texts = { plan: "", kind: "abscess drain", size: "8 f", when: "1 jun 2026 10:00" };
  const input = { actId: newId(), lastSeen: 0, patientId: "patient-1", texts };
  return { db, tubeId: recordEvent({ db, staff: people.nurse }, "placed", input).tubeId ?? "" };
}

const log = (db: Database, tubeId: string, texts: Texts) =>
  recordReading(caller(db), { ...about(tubeId), texts: { flushGiven: "none", ...texts } });

/** Three days of about 30 mL. */
function threeDays(db: Database, tubeId: string): void {
  for (const on of [2, 3, 4]) log(db, tubeId, { drained: "30", to: `${on} jun 2026 10:00` });
}

const asked = (result: { readonly asked: readonly { readonly code: string; readonly field: string }[] }) =>
  result.asked.map(({ code, field }) => `${field}: ${code}`);

describe("what may be a slip in a reading", () => {
  it("is logged as it was typed, and asked: 1000 typed for 100 (hard case 32)", () => {
    const { db, tubeId } = withDrain();
    using _closing = db;
    threeDays(db, tubeId);
    const slip = log(db, tubeId, { drained: "1000", to: "5 jun 2026 10:00" });
    expect(asked(slip)).toEqual(["drained: far-over-median"]);
    expect(readingsOfTube(db, tubeId).at(-1)?.grossUl).toBe(1_000_000);
    const { readingId } = slip;
    const texts = { drained: "100", flushGiven: "none", to: "5 jun 2026 10:00", reason: "a zero too many" };
    expect(asked(correctReading(caller(db), { ...about(tubeId), readingId, texts }))).toEqual([]);
  });

  it("a correction is not asked about the reading that it corrects; a second one of the same time is", () => {
    const { db, tubeId } = withDrain();
    using _closing = db;
    threeDays(db, tubeId);
    expect(asked(log(db, tubeId, { drained: "30", to: "4 jun 2026 10:00" }))).toEqual(["to: overlaps"]);
    const first = viewOutput(db, tubeId).readings.at(-1)!.reading.id;
    const texts = { drained: "31", flushGiven: "none", to: "2 jun 2026 10:00", reason: "misread" };
    expect(asked(correctReading(caller(db), { ...about(tubeId), readingId: first, texts }))).toEqual([]);
  });

  it("a reading before placement, and one after removal, is asked beside its time", () => {
    const { db, tubeId } = withDrain();
    using _closing = db;
    expect(asked(log(db, tubeId, { drained: "30", to: "31 may 2026 23:00" }))).toEqual(["to: before-tube"]);
    const removal = { whole: "yes", loopReleased: "yes", byWhom: "Dr Example", when: "3 jun 2026" };
    recordEvent({ db, staff: people.nurse }, "removed", {
      ...about(tubeId),
      lastSeen: Number.MAX_SAFE_INTEGER,
      texts: removal,
    });
    expect(asked(log(db, tubeId, { drained: "30", to: "3 jun 2026 23:00" }))).toEqual([]);
    expect(asked(log(db, tubeId, { drained: "30", to: "4 jun 2026 1:00" }))).toEqual(["to: after-tube"]);
  });

  it("of a diary is asked by cell", () => {
    const { db, tubeId } = withDrain();
    using _closing = db;
    threeDays(db, tubeId);
    const texts = {
      flushEach: "none",
      when1: "5 jun 2026 10:00",
      drained1: "30",
      when2: "6 jun 2026 10:00",
      drained2: "1000",
      when3: "4 jun 2026 10:00",
      drained3: "30",
      flush3: "300",
    };
    const { asked: cells } = recordDiary(caller(db), { ...about(tubeId), texts });
    const codes = Object.entries(cells).map(([cell, doubts]) => [cell, doubts?.map(({ code }) => code)]);
    expect(codes).toEqual([
      ["drained2", ["far-over-median"]],
      ["when3", ["overlaps"]],
      ["flush3", ["flush-over-order"]],
    ]);
  });

  it("is the same on the page as on the server: both hold it against the same", () => {
    const { db, tubeId } = withDrain();
    using _closing = db;
    threeDays(db, tubeId);
    const { tube } = viewTube(db, tubeId);
    const { readings, zone, rows } = viewOutput(db, tubeId);
    const now = instant(Date.parse("2026-06-10T09:00Z"));
    const onPage = readingBeside(
      tube,
      { readings: readings.map(({ reading }) => reading), zone, row: rows.output, now },
      rows.plausible,
    );
    const onServer = readingContext(db, now, { patientId: "patient-1", tubeId }).context.output;
    expect(onServer).toEqual(onPage);
    expect(onPage.days.map(({ day }) => day)).toEqual([
      "2026-06-01",
      "2026-06-02",
      "2026-06-03",
      "2026-06-04",
    ]);
    expect(onPage).toMatchObject({
      group: "collection",
      inSince: "2026-06-01",
      outBy: null,
      plausible: { overMlPer24h: 5000, overTimesMedian: 10, andMoreMl: 100 },
    });
    expect(JSON.parse(JSON.stringify(onPage))).toEqual(onPage);
  });
});
