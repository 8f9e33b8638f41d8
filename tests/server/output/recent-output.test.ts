import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addAct } from "#db/queries/acts.ts";
import { addReading, logOfTube, type ReadingRow } from "#db/queries/readings.ts";
import { recentLogOfTube } from "#db/queries/recent-readings.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { newId } from "#server/ids.ts";
import { recordReading } from "#server/output/record-reading.ts";
import { standingOf } from "#server/output/standing-readings.ts";
import { readingRow, voidingRow } from "#server/output/stored-reading.ts";
import { viewPatient } from "#server/patients/view-patient.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { viewQueue } from "#server/review/view-queue.ts";
import { instant } from "#shared/day/instant.ts";
import { chartFacts } from "#shared/output/chart/chart-facts.ts";
import { wholeDaysFrame } from "#shared/output/chart/chart-frame.ts";
import { drawChart } from "#shared/output/chart/draw-chart.ts";
import { RECENT_DAYS, recentChart, recentSpan } from "#shared/output/chart/recent-chart.ts";
import { outputOfTube } from "#shared/output/output-of-tube.ts";
import type { Reading } from "#shared/output/reading.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { fold } from "#shared/tube/fold.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { noon, utc } from "#tests/factories/criterion.ts";
import { flush, gross, reading } from "#tests/factories/reading.ts";
import { people } from "#tests/support/database.ts";
import { placed } from "#tests/support/factories.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";
import { history } from "#tests/support/told.ts";

const HOUR = 3_600_000;
const { tubes } = fold(history(placed({ kind: "abscess drain", side: "not sided", on: "2026-09-01" })));
const tube = tubes[0] as TubeState;
const by = { patientId: "patient-1", actId: "act-1", recordedBy: people.caller.id };

/** What is written in one row: a reading, one in the place of an earlier row, or that an earlier row does not count. */
type Written = {
  readonly act: "record" | "replace" | "void";
  readonly of: number;
  readonly hoursAgo: number;
  readonly hours: number | null;
};

const readingOf = (id: string, { hoursAgo, hours }: Written): Reading => {
  const to = instant(noon - hoursAgo * HOUR);
  const from = hours === null ? "since last emptying" : instant(to - hours * HOUR);
  return reading({
    id,
    tubeId: tube.id,
    from,
    to,
    gross: gross(20 + hoursAgo),
    flushGiven: flush(5),
    zone: utc,
  });
};

function write(db: Database, log: readonly Written[]): void {
  inTransaction(db, (tx) => {
    const recordedAt = noon;
    addAct(tx, {
      id: by.actId,
      staffId: by.recordedBy,
      command: "test",
      inputHash: "-",
      result: "null",
      recordedAt,
    });
    const rows: ReadingRow[] = [];
    for (const [index, one] of log.entries()) {
      const id = `row-${index}`;
      const at = { ...by, recordedAt: instant(noon + index) };
      const amendable = rows.filter(({ toAt }) => toAt > noon - longAgo.hoursAgo * HOUR);
      const earlier = one.act === "record" ? undefined : amendable[one.of % Math.max(1, amendable.length)];
      const row =
        earlier === undefined
          ? readingRow(readingOf(id, one), at)
          : one.act === "replace"
            ? readingRow(readingOf(id, one), at, { replaces: earlier.id, reason: "misread" })
            : voidingRow(id, earlier, { ...at, reason: "another patient's" });
      rows.push(row);
      addReading(tx, row);
    }
  });
}

const asked = { zone: utc, now: noon, protocol: exampleProtocol };
const since = recentSpan(tube, asked).from;
const recentRows = (db: Database) => recentLogOfTube(db, { tubeId: tube.id, since });
const recently = (db: Database) => recentChart(tube, { ...asked, readings: standingOf(recentRows(db)) });

function wholly(db: Database) {
  const readings = standingOf(logOfTube(db, tube.id));
  const output = outputOfTube(tube, { ...asked, readings, row: exampleProtocol.output });
  return chartFacts(tube, {
    ...asked,
    readings,
    output,
    trend: { kind: "does not apply", because: "sessions" },
  });
}

/** Rows of so many days back, some amended. */
const writtenWithin = (days: number): fc.Arbitrary<Written> =>
  fc.record({
    act: fc.constantFrom("record", "record", "replace", "void"),
    of: fc.nat({ max: 30 }),
    hoursAgo: fc.integer({ min: -12, max: days * 24 }),
    hours: fc.option(fc.integer({ min: 1, max: 240 }), { freq: 2 }),
  });

/** A whole day, five weeks ago, which nothing amends. */
const longAgo: Written = { act: "record", of: 0, hoursAgo: 35 * 24, hours: 24 };

/** A tube that began within the days that are drawn, and one whose log reaches further back. */
const logs = fc.oneof(
  fc.array(writtenWithin(12), { maxLength: 30 }),
  fc.array(writtenWithin(28), { maxLength: 30 }).map((log) => [longAgo, ...log]),
);

const withoutChanges = ({ changes: _, ...drawn }: ReturnType<typeof drawChart>) => drawn;

describe("the last days of an output, for a list", () => {
  it("are drawn as the whole log draws them, whatever was amended, voided, or brought back", () => {
    fc.assert(
      fc.property(logs, (log) => {
        using db = clinicWithPatient();
        write(db, log);
        const [whole, recent] = [wholly(db), recently(db)];
        const frame = wholeDaysFrame(whole, RECENT_DAYS);
        expect(wholeDaysFrame(recent, RECENT_DAYS)).toEqual(frame);
        if (frame === null) return;
        expect(withoutChanges(drawChart(recent, frame))).toEqual(withoutChanges(drawChart(whole, frame)));
      }),
      { numRuns: 300 },
    );
  });

  it("read no more of a log of a thousand than those days and the one before them", () => {
    using db = clinicWithPatient();
    write(
      db,
      Array.from({ length: 1000 }, (_, index) => ({
        act: "record",
        of: 0,
        hoursAgo: 6 * index,
        hours: null,
      })),
    );
    // Noon of the 16th back to midnight before the 3rd: 13 days and a half of four emptyings, the one at midnight, and the one before.
    expect(recentRows(db)).toHaveLength(13.5 * 4 + 1 + 1);
    expect(recently(db).readings).toHaveLength(13.5 * 4);
  });
});

const about = (texts: Texts) => ({ actId: newId(), lastSeen: 0, patientId: "patient-1", texts });

const withTube = (db: Database, texts: Texts): string =>
  recordEvent({ db, staff: people.nurse }, "placed", about({ size: "8 f", plan: "", ...texts })).tubeId ?? "";

const log = (db: Database, tubeId: string, texts: Texts) =>
  recordReading(
    { db, staff: people.caller },
    { ...about({ drained: "35", flushGiven: "none", ...texts }), tubeId },
  );

describe("beside each tube of a list", () => {
  it("stand the last days of its output; a tube wholly inside has none, and a feeding tube only what was logged", () => {
    using db = clinicWithPatient();
    const drain = withTube(db, { kind: "abscess drain", when: "-30" });
    const stent = withTube(db, { kind: "jj l", when: "-30" });
    const feeding = withTube(db, { kind: "balloon gastrostomy", when: "-30" });
    log(db, drain, { from: "-1 08:00", to: "now" });
    const { charts } = viewPatient(db, "patient-1");
    expect(Object.keys(charts)).toEqual([drain]);
    expect(charts[drain]?.readings).toMatchObject([{ net: 35_000 }]);
    expect(charts[stent]).toBeUndefined();
    log(db, feeding, { from: "-1 08:00", to: "now" });
    expect(viewPatient(db, "patient-1").charts[feeding]?.readings).toHaveLength(1);
    const line = viewQueue(db).lines.find((one) => one.tube?.id === drain);
    expect(line?.chart?.readings).toEqual(charts[drain]?.readings);
  });

  it("an emptying of three weeks ago is none of these days", () => {
    using db = clinicWithPatient();
    const drain = withTube(db, { kind: "abscess drain", when: "-30" });
    log(db, drain, { from: "-22 08:00", to: "-21 08:00" });
    const chart = viewPatient(db, "patient-1").charts[drain];
    expect(chart?.readings).toEqual([]);
    expect(chart?.span).not.toBeNull();
  });
});
