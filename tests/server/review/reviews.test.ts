import { describe, expect, it } from "vitest";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { correctReading, recordReading } from "#server/output/record-reading.ts";
import { recordAmendment } from "#server/record/record-amendment.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { viewQueue } from "#server/review/view-queue.ts";
import { viewReview } from "#server/review/view-review.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { people } from "#tests/support/database.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";

const about = () => ({ actId: newId(), lastSeen: Number.MAX_SAFE_INTEGER, patientId: "patient-1" });

const record = (db: Database, form: FormKind, said: { readonly tubeId?: string; readonly texts: Texts }) =>
  recordEvent({ db, staff: people.physician }, form, { ...about(), ...said });

const placed = (db: Database, texts: Texts): string =>
  record(db, "placed", { texts: { size: "8 f", plan: "", ...texts } }).tubeId ?? "";

const decided: Texts = { what: "imaging", by: "+2", decidedBy: "Dr Example", closes: "review" };

describe("what waits for a physician", () => {
  it("stands part by part: an alarm of today before a review that is long due", () => {
    using db = clinicWithPatient();
    const drain = placed(db, { kind: "abscess drain", when: "-40" });
    const kidney = placed(db, { kind: "pcn l", when: "-20" });
    record(db, "blocked", { tubeId: kidney, texts: {} });
    const { lines } = viewQueue(db);
    expect(lines.map(({ part, tube }) => [part, tube?.id])).toEqual([
      ["alarm", kidney],
      ["review due", drain],
    ]);
    expect(lines[0]?.criterion).toBeNull();
    expect(lines[1]?.criterion).toMatchObject({ kind: "cannot tell" });
    expect(lines[1]?.criterion?.because[0]).toEqual({ code: "no-complete-day" });
  });
});

/** Emptied every midnight, so many mL each, the last of them today at 00:00. */
function logDays(db: Database, tubeId: string, volumes: readonly string[]): void {
  const daysBack = (n: number) => `${n === 0 ? "today" : `-${n}`} 00:00`;
  for (const [index, drained] of volumes.entries()) {
    const back = volumes.length - 1 - index;
    recordReading(
      { db, staff: people.caller },
      {
        ...about(),
        tubeId,
        texts: { drained, flushGiven: "none", from: daysBack(back + 1), to: daysBack(back) },
      },
    );
  }
}

const partsOf = (db: Database) => viewQueue(db).lines.map(({ part, tube }) => [part, tube?.id]);

describe("a plateau", () => {
  it("puts a collection drain into the queue, the one that came up first before the others, until a review has seen it", () => {
    using db = clinicWithPatient();
    const later = placed(db, { kind: "abscess drain", when: "-9", cavity: "left flank" });
    const first = placed(db, { kind: "abscess drain", when: "-9", cavity: "pelvis" });
    logDays(db, later, ["60", "60", "60", "60"]);
    expect(partsOf(db)).toEqual([]);
    logDays(db, first, ["60", "60", "60", "60", "60", "60"]);
    recordReading(
      { db, staff: people.caller },
      {
        ...about(),
        tubeId: later,
        texts: { drained: "60", flushGiven: "none", from: "-5 00:00", to: "-4 00:00" },
      },
    );
    expect(partsOf(db)).toEqual([
      ["plateau", first],
      ["plateau", later],
    ]);
    record(db, "review decided", {
      tubeId: first,
      texts: { what: "leave in", by: "+10", decidedBy: "Dr Example", closes: "review" },
    });
    expect(partsOf(db)).toEqual([["plateau", later]]);
  });

  it("of a drain without a date, which has no review, stands there too", () => {
    using db = clinicWithPatient();
    const drain = placed(db, { kind: "abscess drain", when: "?" });
    expect(partsOf(db)).toEqual([]);
    logDays(db, drain, ["60", "60", "60", "60", "60"]);
    expect(partsOf(db)).toEqual([["plateau", drain]]);
  });
});

describe("hard case 33: what a decision rested on", () => {
  it("is kept with it, and held against what stands now; putting the decision right keeps what was seen then", () => {
    using db = clinicWithPatient();
    const tubeId = placed(db, { kind: "abscess drain", when: "-9" });
    const log = (drained: string) =>
      recordReading(
        { db, staff: people.caller },
        { ...about(), tubeId, texts: { drained, flushGiven: "none", to: "now" } },
      );
    const { readingId } = log("35");
    const { eventIds } = record(db, "review decided", { tubeId, texts: decided });
    const seen = viewReview(db, tubeId, people.physician.id);
    expect(seen.changes).toEqual([]);
    expect(seen.lastReview?.evidence).toMatchObject({ readings: [readingId] });
    expect(seen.lastReview?.evidence?.said).toEqual([
      // One emptying of today: no day is complete, the two that the row asks for are not known, and neither is the patient.
      "cannot tell",
      "no-complete-day",
      "day-unknown",
      "day-unknown",
      "clinical-unknown",
      "clinical-unknown",
    ]);

    correctReading(
      { db, staff: people.caller },
      { ...about(), readingId, texts: { drained: "350", flushGiven: "none", to: "now", reason: "misread" } },
    );
    expect(viewReview(db, tubeId, people.physician.id).changes).toMatchObject([
      { change: "corrected", was: { asSpoken: "35" }, now: { asSpoken: "350" } },
    ]);
    recordAmendment(
      { db, staff: people.physician },
      {
        ...about(),
        eventId: eventIds[0] ?? "",
        texts: { ...decided, words: "Film first.", amendedBecause: "left out" },
      },
    );
    expect(viewReview(db, tubeId, people.physician.id).lastReview?.evidence).toEqual(
      seen.lastReview?.evidence,
    );
    expect(viewReview(db, tubeId, people.physician.id).changes).toHaveLength(1);
  });
});
