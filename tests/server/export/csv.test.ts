import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { patientById, updatePatient } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { csvLines } from "#server/export/csv/csv-table.ts";
import { exportPieces } from "#server/export/export-part.ts";
import { newId } from "#server/ids.ts";
import { recordReading, voidReading } from "#server/output/record-reading.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { undoAct } from "#server/record/undo-act.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { ExportPart } from "#shared/words/exports.ts";
import { people } from "#tests/support/database.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";

const nurse = (db: Database) => ({ db, staff: people.nurse });
const about = () => ({ actId: newId(), lastSeen: Number.MAX_SAFE_INTEGER, patientId: "patient-1" });

const record = (db: Database, form: FormKind, texts: Texts & { tubeId?: string }) => {
  const { tubeId, ...typed } = texts;
  const input = { ...about(), texts: typed, ...(tubeId !== undefined && { tubeId }) };
  return { actId: input.actId, tubeId: recordEvent(nurse(db), form, input).tubeId ?? "" };
};

const open = (db: Database, texts: Texts) => record(db, "placed", { plan: "", ...texts }).tubeId;

const bytesOf = (db: Database, part: ExportPart): Buffer => Buffer.concat([...exportPieces(db, part)]);

/** The rows of a file as a spreadsheet reads them. */
function rowsOf(db: Database, part: ExportPart): Record<string, string>[] {
  const text = bytesOf(db, part)
    .toString("utf8")
    .replace(/^\u{feff}/u, "");
  const { data, errors } = Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true });
  expect(errors).toEqual([]);
  return data;
}

describe("a table for a spreadsheet", () => {
  const table = {
    columns: { text: (row: string | number) => row, same: String },
    rows: (): readonly (string | number)[] => [
      'a "b", c',
      "two\nlines",
      "=1+1",
      "=1\n+1",
      "@x",
      "'=1",
      -10,
      0,
    ],
  };

  it("is UTF-8 with its mark, its lines end in CRLF, and cells are quoted where they must be (RFC 4180)", () => {
    using db = clinicWithPatient();
    const lines = [...csvLines(table, db)];
    expect(lines[0]).toBe("\u{feff}text,same\r\n");
    expect(lines[1]).toBe('"a ""b"", c","a ""b"", c"\r\n');
    expect(lines[2]).toBe('"two\nlines","two\nlines"\r\n');
    expect(bytesOf(db, "patients.csv").subarray(0, 3)).toEqual(Buffer.from([0xef, 0xbb, 0xbf]));
  });

  it("gives a spreadsheet nothing to run, however many lines a text has; a negative figure stays a figure", () => {
    using db = clinicWithPatient();
    const lines = [...csvLines(table, db)].slice(3);
    expect(lines).toEqual([
      '"\'=1+1","\'=1+1"\r\n',
      '"\'=1\n+1","\'=1\n+1"\r\n',
      '"\'@x","\'@x"\r\n',
      "\"''=1\",\"''=1\"\r\n",
      '-10,"\'-10"\r\n',
      "0,0\r\n",
    ]);
  });
});

describe("patients.csv", () => {
  it("says what is unknown, and whether anybody is followed under the record", () => {
    using db = clinicWithPatient();
    const patient = patientById(db, "patient-1");
    if (patient === undefined) throw new Error("the patient is gone");
    inTransaction(db, (tx) => updatePatient(tx, { ...patient, birthOn: null }));
    const [row] = rowsOf(db, "patients.csv");
    expect(row).toMatchObject({
      "family name": "Brackenfold",
      "birth date": "unknown",
      "needs an interpreter": "unknown",
      number: "clinic 000417",
      "second number": "none",
      record: "in use",
      telephones: "unknown",
      "tubes recorded": "0",
    });
    inTransaction(db, (tx) => updatePatient(tx, { ...patient, withdrawnAt: patient.updatedAt }));
    expect(rowsOf(db, "patients.csv")[0]?.record).toBe("withdrawn 2026-01-05");
  });
});

describe("entries.csv", () => {
  it("tells what happened with both ends of a partial date, who recorded it, and what became of it", () => {
    using db = clinicWithPatient();
    open(db, { kind: "pcn", side: "l", size: "?", when: "march 2026" });
    const { actId } = record(db, "placed", { kind: "pcn", side: "r", size: "8 f", when: "?", plan: "" });
    undoAct(nurse(db), { ...about(), undoes: actId });
    expect(rowsOf(db, "entries.csv")).toMatchObject([
      {
        tubes: "Left nephrostomy, size unknown",
        "happened, earliest": "2026-03-01",
        "happened, latest": "2026-03-31",
        "happened, in words": "March 2026",
        time: "unknown",
        entry: "placed",
        what: "Placed: Left nephrostomy, size unknown.",
        standing: "stands",
        "recorded by": "Tansy Nurseworth",
      },
      { "happened, earliest": "unknown", "happened, in words": "unknown date", standing: "undone" },
    ]);
  });
});

describe("steps.csv", () => {
  it("has each open step with its days, its owner and its why in words", () => {
    using db = clinicWithPatient();
    open(db, { kind: "pcn", side: "l", size: "8 f", when: "14 aug 2026" });
    open(db, { kind: "pcn", side: "r", size: "8 f", when: "?" });
    const rows = rowsOf(db, "steps.csv");
    expect(rows.find(({ step }) => step === "Exchange")).toMatchObject({
      tube: "Left nephrostomy, 8 F",
      target: "2026-10-30",
      "protocol's row": "EXAMPLE, approved by nobody",
      why: expect.stringContaining("Counted from Fri 14 Aug 2026. Row nephrostomy, version 1"),
    });
    expect(rows.find(({ step }) => step === "Assess the date")).toMatchObject({
      tube: "Right nephrostomy, 8 F",
      earliest: "none",
      latest: "none",
      standing: "cannot tell: placement date unknown",
    });
  });
});

describe("readings.csv", () => {
  it("keeps a negative net, says what cannot be told, and leaves out what was voided", () => {
    using db = clinicWithPatient();
    const tubeId = open(db, { kind: "abscess drain", size: "8 f", when: "1 jun 2026 10:00" });
    const log = (texts: Texts) => recordReading(nurse(db), { ...about(), tubeId, texts }).readingId;
    log({ drained: "20", flushGiven: "30", to: "2 jun 2026 08:00" });
    log({ drained: "?", flushGiven: "?", to: "3 jun 2026 08:00" });
    const readingId = log({ drained: "500", flushGiven: "0", to: "4 jun 2026 08:00" });
    const reason = { reason: "another tube" };
    voidReading(nurse(db), { ...about(), readingId, texts: reason });
    expect(rowsOf(db, "readings.csv")).toMatchObject([
      {
        tube: "Abscess drain, 8 F",
        since: "since last emptying",
        "emptied at": "2026-06-02 08:00",
        zone: "Europe/London",
        "drained mL": "20",
        "flush given mL": "30",
        "net mL": "-10",
        "recorded by": "Tansy Nurseworth",
      },
      {
        "drained mL": "unknown",
        "drained, how known": "unknown",
        "flush given mL": "not recorded",
        "net mL": "cannot tell",
        "why net cannot be told": expect.stringContaining("A volume of this day is unknown."),
      },
    ]);
  });

  it("holds air leak, swing and what was felt: nothing felt is an answer", () => {
    using db = clinicWithPatient();
    const tubeId = open(db, { kind: "chest tube r", size: "12 f", when: "1 jun 2026 10:00" });
    const log = (texts: Texts) => recordReading(nurse(db), { ...about(), tubeId, texts });
    log({ drained: "80", airLeak: "present", swing: "seen", to: "2 jun 2026 08:00" });
    log({ drained: "80", symptoms: "none", to: "3 jun 2026 08:00" });
    log({ drained: "80", symptoms: "cough, pain", to: "4 jun 2026 08:00" });
    const not = "not recorded";
    expect(rowsOf(db, "readings.csv")).toMatchObject([
      { "air leak": "present", swing: "seen", "felt during it": not },
      { "air leak": not, swing: not, "felt during it": "none" },
      { "felt during it": "cough; pain" },
    ]);
  });
});
