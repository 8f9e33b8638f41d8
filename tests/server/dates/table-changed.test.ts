import { describe, expect, it, onTestFinished, vi } from "vitest";
import { projectionOf } from "#db/queries/projections.ts";
import { countOpenProposals, openProposals } from "#db/queries/proposals.ts";
import type { Database } from "#db/sqlite.ts";
import { confirmDates, confirmSeveral } from "#server/dates/confirm-dates.ts";
import { listProposals } from "#server/dates/list-proposals.ts";
import { newId } from "#server/ids.ts";
import { recordReading } from "#server/output/record-reading.ts";
import { changeDraft } from "#server/protocol/draft.ts";
import { draftImpact } from "#server/protocol/draft-impact.ts";
import { signDraft } from "#server/protocol/sign-draft.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { viewTube } from "#server/tubes/view-tube.ts";
import { instant } from "#shared/day/instant.ts";
import type { ProtocolRow } from "#shared/protocol/interval-row.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { PASSWORD, people } from "#tests/support/database.ts";
import { exchanged, placed } from "#tests/support/factories.ts";
import { addInventedPatient, clinicWithPatient, recordAs } from "#tests/support/patient.ts";
import { refusalsOf } from "#tests/support/refusal.ts";
import { reviewDecided } from "#tests/support/review-factories.ts";
import { command } from "#tests/support/told.ts";

const lead = (db: Database) => ({ db, staff: people.lead });
const nurse = (db: Database) => ({ db, staff: people.nurse });

const left = { certainty: "confirmed", value: "left" } as const;

/** Two nephrostomies of one patient, an abscess drain of another. */
function clinic(): Database & Disposable {
  const db = clinicWithPatient();
  addInventedPatient(db, "patient-2", "000418");
  recordAs(db, [
    { ...command(placed({ on: "2025-12-01" })), eventId: newId() },
    {
      ...command(placed({ on: "2025-12-15", tube: "tube-2", number: 2, side: left })),
      eventId: newId(),
    },
  ]);
  const drain = placed({ on: "2025-12-20", tube: "tube-3", kind: "abscess drain" });
  recordAs(db, [{ ...command(drain), eventId: newId() }], "patient-2");
  return db;
}

/** The example's nephrostomy row, 63 / 77 / 90, as 49 / 63 / 77. */
const shorter = (row: ProtocolRow): ProtocolRow =>
  row.id === "nephrostomy" ? { ...row, earliest: 49, target: 63, latest: 77 } : row;
const shorterRows = (protocol: Protocol): Protocol => ({
  ...protocol,
  intervals: protocol.intervals.map(shorter),
});

const draft = (db: Database, change = shorterRows, revision = 0) =>
  changeDraft(lead(db), { actId: newId(), revision, input: { change: newId() }, change });
const sign = (db: Database, revision = 1) =>
  signDraft({ db, staff: people.physician }, { actId: newId(), revision, password: PASSWORD });

const exchangeOf = (db: Database, tubeId: string) => {
  const step = viewTube(db, tubeId).steps.find(({ kind }) => kind === "exchange");
  return [step?.earliest, step?.target, step?.latest, step?.pins.protocol];
};
const stepsOfAll = (db: Database) =>
  ["patient-1", "patient-2"].flatMap((id) =>
    projectionOf(db, id).steps.map(({ why: _why, ...step }) => step),
  );

// Arithmetic from the row: 2025-12-01 + 63, 77, 90 days, and + 49, 63, 77; Sunday goes to Friday before (latest) by the calendar.
const stood = ["2026-02-02", "2026-02-16", "2026-02-27", 1];
const moved = ["2026-01-19", "2026-02-02", "2026-02-16", 2];

describe("a row of the table changed (hard case 34)", () => {
  it("is previewed for whom it touches, and signing proposes just that; the old dates stand", async () => {
    using db = clinic();
    expect(exchangeOf(db, "tube-1")).toEqual(stood);
    const before = stepsOfAll(db);
    draft(db);
    const impact = draftImpact(db, { page: 1 });
    expect(impact).toMatchObject({ tubes: 2, steps: 2, revision: 1 });
    expect(
      impact.lines.map(({ tube, step, patient }) => [tube.id, step, patient.familyName, patient.number]),
    ).toEqual([
      ["tube-1", "exchange", "Brackenfold", "000417"],
      ["tube-2", "exchange", "Brackenfold", "000417"],
    ]);
    expect(countOpenProposals(db)).toBe(0);

    const signed = await sign(db);
    expect(signed).toMatchObject({ version: 2, by: "Petra Physick", alone: false, tubes: impact.tubes });
    const listed = listProposals(db, { page: 1 });
    expect(listed.count).toBe(impact.steps);
    expect(listed.lines.map(({ tube, stood, proposed }) => [tube.id, stood, proposed])).toEqual(
      impact.lines.map(({ tube, stood, proposed }) => [tube.id, stood, proposed]),
    );
    expect(listed.lines.map(({ cause }) => cause)).toEqual(["protocol 2", "protocol 2"]);
    expect(stepsOfAll(db)).toEqual(before);
  });

  it("counts those that would be past the latest date today", () => {
    using db = clinicWithPatient();
    recordAs(db, [{ ...command(placed({ on: "2025-09-20" })), eventId: newId() }]);
    draft(db, (protocol) => ({
      ...protocol,
      intervals: protocol.intervals.map((row) =>
        row.id === "nephrostomy" ? { ...row, earliest: 1, target: 2, latest: 3 } : row,
      ),
    }));
    expect(draftImpact(db, { page: 1 })).toMatchObject({ tubes: 1, pastLatest: 1 });
  });

  it("a review that rested on a reading stands on its own day while the reading does", () => {
    vi.useFakeTimers({ toFake: ["Date"], now: new Date("2026-01-05T12:00Z") });
    onTestFinished(() => void vi.useRealTimers());
    using db = clinic();
    const { readingId } = recordReading(nurse(db), {
      actId: newId(),
      lastSeen: 0,
      patientId: "patient-2",
      tubeId: "tube-3",
      texts: { drained: "40", flushGiven: "none", to: "5 jan 2026 00:00", from: "3 jan 2026 00:00" },
    });
    const evidence = {
      asOf: instant(Date.parse("2026-01-05T08:00Z")),
      readings: [readingId],
      said: [],
      protocol: 1,
    };
    const review = reviewDecided({
      on: "2026-01-05",
      tube: "tube-3",
      decided: [["leave in", "2026-02-03"]],
      evidence,
    });
    recordAs(db, [{ ...command(review), eventId: newId() }], "patient-2");
    draft(db, ({ escalation, ...protocol }) => ({
      ...protocol,
      escalation: { ...escalation, daysPastTarget: escalation.daysPastTarget + 1 },
    }));
    const reviews = draftImpact(db, { page: 1 }).lines.filter(({ step }) => step === "review");
    expect(reviews.map(({ stood }) => stood?.targetOn)).toEqual(["2026-02-03"]);
  });

  it("counts a tube once, however many of its dates would move", () => {
    using db = clinic();
    draft(db, (protocol) => ({
      ...protocol,
      escalation: { ...protocol.escalation, daysPastTarget: protocol.escalation.daysPastTarget + 1 },
    }));
    const { lines, ...counts } = draftImpact(db, { page: 1 });
    expect(lines.map(({ tube, step }) => [tube.id, step])).toEqual([
      ["tube-1", "call"],
      ["tube-2", "call"],
      ["tube-3", "call"],
      ["tube-1", "exchange"],
      ["tube-2", "exchange"],
      ["tube-3", "review"],
    ]);
    expect(counts).toMatchObject({ tubes: 3, pastLatest: 3, steps: 6 });
  });

  it("once confirmed, one tube or all, dates go by the new row; what was confirmed is kept", async () => {
    using db = clinic();
    draft(db);
    await sign(db);
    confirmDates(nurse(db), { actId: newId(), patientId: "patient-1", tubeId: "tube-1", lastSeen: 99 });
    expect(exchangeOf(db, "tube-1")).toEqual(moved);
    expect(exchangeOf(db, "tube-2")[3]).toBe(1);
    expect(openProposals(db, "tube-1")).toEqual([]);

    const rest = listProposals(db, { page: 1 }).lines.map(({ id }) => id);
    expect(confirmSeveral(nurse(db), { actId: newId(), proposals: rest })).toEqual({ tubes: 1 });
    expect(exchangeOf(db, "tube-2")[3]).toBe(2);
    expect(countOpenProposals(db)).toBe(0);
    const kept = db.sqlite.prepare("select count(*) as n from proposals where settled_by_event is not null");
    expect(kept.get()).toEqual({ n: 2 });
  });

  it("taken back, the confirmed dates are proposed again and the old ones stand", async () => {
    using db = clinic();
    draft(db);
    await sign(db);
    const actId = newId();
    const all = listProposals(db, { page: 1 }).lines.map(({ id }) => id);
    confirmSeveral(nurse(db), { actId, proposals: all });
    undoAct(nurse(db), { actId: newId(), undoes: actId });
    expect(exchangeOf(db, "tube-1")).toEqual(stood);
    expect(listProposals(db, { page: 1 }).count).toBe(2);
  });

  it("an exchange meanwhile goes by the new row, and nothing is proposed of it any more", async () => {
    using db = clinic();
    draft(db);
    await sign(db);
    recordAs(db, [{ ...command(exchanged({ on: "2026-01-02" })), eventId: newId() }]);
    expect(exchangeOf(db, "tube-1")[3]).toBe(2);
    expect(listProposals(db, { page: 1 }).lines.map(({ tube }) => tube.id)).toEqual(["tube-2"]);
  });

  it("what is no longer proposed as it was seen is not confirmed, nor anything else of that press", async () => {
    using db = clinic();
    draft(db);
    await sign(db);
    const seen = listProposals(db, { page: 1 }).lines.map(({ id }) => id);
    recordAs(db, [{ ...command(exchanged({ on: "2026-01-02" })), eventId: newId() }]);
    expect(refusalsOf(() => confirmSeveral(nurse(db), { actId: newId(), proposals: seen }))).toMatchObject([
      { code: "proposals-changed", args: { count: 1 } },
    ]);
    expect(exchangeOf(db, "tube-2")[3]).toBe(1);
  });

  it("a later version takes the place of what an earlier one proposed and nobody confirmed", async () => {
    using db = clinic();
    draft(db);
    await sign(db);
    const back = (protocol: Protocol): Protocol => ({
      ...protocol,
      intervals: protocol.intervals.map((row) =>
        row.id === "nephrostomy" ? { ...row, earliest: 63, target: 77, latest: 90 } : row,
      ),
    });
    draft(db, back);
    expect(draftImpact(db, { page: 1 })).toMatchObject({ tubes: 0, lines: [] });
    expect(await sign(db)).toMatchObject({ version: 3, tubes: 0 });
    expect(countOpenProposals(db)).toBe(0);
  });

  it("of a patient of whom an older release stored nothing but the tubes, comes out the same", () => {
    using db = clinic();
    draft(db);
    const before = draftImpact(db, { page: 1 });
    db.sqlite.exec("delete from patient_states");
    expect(draftImpact(db, { page: 1 })).toEqual(before);
  });

  it("of an alarm row reads the logs: an alarm that would come up is proposed", () => {
    using db = clinic();
    const texts = { drained: "400", flushGiven: "0", to: "5 jan 2026 00:00", from: "3 jan 2026 00:00" };
    recordReading(nurse(db), {
      actId: newId(),
      lastSeen: 0,
      patientId: "patient-1",
      tubeId: "tube-1",
      texts: { ...texts, characters: "urine-like", leak: "none" },
    });
    draft(db, (protocol) => ({
      ...protocol,
      outputRows: protocol.outputRows && {
        ...protocol.outputRows,
        low: protocol.outputRows.low.map((row) => ({ ...row, underMlPer24h: 500 })),
      },
    }));
    const { lines } = draftImpact(db, { page: 1 });
    expect(lines.filter(({ step }) => step === "alarm")).toMatchObject([
      { tube: { id: "tube-1" }, stood: null },
    ]);
  });
});
