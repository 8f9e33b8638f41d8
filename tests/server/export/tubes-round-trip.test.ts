import fc from "fast-check";
import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { patientIds } from "#db/queries/patient-list.ts";
import { patientById } from "#db/queries/patients.ts";
import { events } from "#db/schema/events.ts";
import type { Database } from "#db/sqlite.ts";
import { exportPieces } from "#server/export/export-part.ts";
import { newId } from "#server/ids.ts";
import { detailsOf } from "#server/patients/correct-patient.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { loadSheet } from "#server/sheet/load-sheet.ts";
import { sheetReading, standSheet } from "#server/sheet/stand-sheet.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { sourced } from "#shared/record/sourced.ts";
import { LEFT_OUT } from "#shared/sheet/answers.ts";
import { labelOf, type SheetField, sheetFields } from "#shared/sheet/sheet-fields.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import { fold } from "#shared/tube/fold.ts";
import { kindOf, tubeKinds } from "#shared/tube/kind/kinds.ts";
import { modes, retentions, roles } from "#shared/tube/vocabulary.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";
import { broughtIn, kept } from "#tests/support/sheet.ts";

const fileOf = (db: Database): Buffer => Buffer.concat([...exportPieces(db, "tubes.csv")]);

/** Everything that is understood of each patient and each tube: who it is, and what the record opened with. */
const understood = (db: Database) =>
  patientIds(db).map((id) => {
    const row = patientById(db, id);
    if (row === undefined) throw new Error("a patient is gone");
    const opened = loadRecord(db, id).events.filter(({ kind }) => kind === "taken over");
    return {
      details: detailsOf(db, row),
      tubes: opened.map(({ when, time, payload }) => ({ when, time, payload })),
    };
  });

const standingsOf = async (db: Database, file: Buffer) => standSheet(db, loadSheet(db, kept(db, file)));
const reasonsOf = async (db: Database, file: Buffer) =>
  (await standingsOf(db, file)).map((row) =>
    row.stands === "set aside" ? row.refusals.map(({ refusal }) => refusal.code).join() : row.stands,
  );

type Row = Partial<Record<SheetField, string>>;

const oneOf = (...cells: string[]) => fc.constantFrom(...cells);
const line = oneOf("", "?", "Dr Example", "+ve about it", 'said "so"; twice');

const anyTube = fc.record({
  kind: fc.oneof(
    oneOf("PCN", "perc chole", "peg", "jj", "ipc"),
    fc.constantFrom(...tubeKinds.map((kind) => kindOf(kind).name)),
  ),
  side: oneOf("left", "R", "?", "unk", "~right", "transplant"),
  size: oneOf("8 F", "~8 F", "?", "", "2.675 mm", "8.5Fr", "0.107 in"),
  placedOn: oneOf("2025-03-14", "~14/3/25", "2025-03", "2025", "?", "", "2025-03-14 10:30", "10-14 mar 2025"),
  exchangedOn: oneOf("", "?", "2026-05-02", "in May 2026", "~2026-05-02", "2026-05-02 09:15"),
  plan: oneOf(
    "",
    "as protocol",
    "exchange by 14 jan 2027 Dr Example because of a trip",
    "remove by 2027-02-01",
    "review 24 dec 2026, because of the holidays",
  ),
  from: oneOf("", "Saltmarsh Infirmary"),
  takes: oneOf("", "?", ".035 in", "~0.038 in", "0.9 mm"),
  retention: fc.oneof(oneOf("", "?", "pigtail"), fc.constantFrom(...retentions)),
  fullLength: oneOf("", "?", "25", "~25 cm", "250.5 mm"),
  externalLength: oneOf("", "?", "12", "~12.25 cm"),
  flushOrder: oneOf("", "?", "none", "10 mL x 3 a day", "~5 mL"),
  balloon: oneOf("", "?", "10", "~9.5 mL"),
  cavity: line,
  organ: line,
  route: oneOf("", "transhepatic"),
  indication: line,
  role: fc.constantFrom("", ...roles),
  mode: fc.constantFrom("", ...modes),
  note: oneOf("", "hard to flush", "two\nlines", "-1 is no figure"),
});

const anyPerson = fc.record({
  familyName: oneOf("Brackenfold", "Móssgate", "O'Larkspindle"),
  birthOn: oneOf("1951-04-03", "3 may 1962", "?", ""),
  issuer: oneOf("", "?", "Saltmarsh"),
  hasSecond: fc.boolean(),
  telephones: oneOf("", "555 0117", "555 0117 / 555 0118 evenings or nights", "(555) 0139; +1 555 0140"),
  language: oneOf("", "?", "Welsh"),
  needsInterpreter: oneOf("", "yes", "no", "Cornish"),
  alternate: fc.constantFrom(["", ""], ["Perrin, her son", "555 0199"], ["Odelia", "?"]),
  homeNurse: line,
  referrer: line,
  familyDoctor: line,
  responsibleService: line,
  tubes: fc.array(anyTube, { minLength: 1, maxLength: 3 }),
});

/** Each person under names and numbers of their own, a row a tube. */
const anyRows = fc.array(anyPerson, { minLength: 1, maxLength: 4 }).map((persons) =>
  persons.flatMap(({ tubes, alternate, hasSecond, ...person }, place): Row[] =>
    tubes.map((tube) => ({
      ...person,
      givenName: `Ottoline ${place}`,
      number: `00${place}711`,
      secondNumber: hasSecond ? `T-${place}` : "",
      alternateName: alternate[0] ?? "",
      alternateTelephone: alternate[1] ?? "",
      ...tube,
    })),
  ),
);

function listOf(rows: readonly Row[]): string {
  const names = sheetFields.filter((field) => rows.some((row) => row[field] !== undefined));
  return Papa.unparse(
    { fields: names.map(labelOf), data: rows.map((row) => names.map((name) => row[name] ?? "")) },
    { escapeFormulae: true },
  );
}

const answers = { dateOrder: "day first" } as const;

describe("tubes.csv brought in as a list", { timeout: 120_000 }, () => {
  it("is understood as what it was written from, and written again is the same file (law)", async () => {
    let tubes = 0;
    await fc.assert(
      fc.asyncProperty(anyRows, async (rows) => {
        using first = testDatabase();
        using second = testDatabase();
        const list = listOf(rows);
        const found = await standSheet(first, loadSheet(first, kept(first, list, answers)));
        fc.pre(found.some(({ stands }) => stands === "comes in"));
        tubes += (await broughtIn(first, list, answers)).tubes;
        const file = fileOf(first);
        await broughtIn(second, file);
        expect(understood(second)).toEqual(understood(first));
        expect(fileOf(second).toString()).toBe(file.toString());

        const before = first.orm.select().from(events).all();
        expect(new Set(await reasonsOf(first, file))).toEqual(new Set(["here already"]));
        await expect(broughtIn(first, file)).rejects.toThrow("nothing-to-bring-in");
        expect(first.orm.select().from(events).all()).toEqual(before);
      }),
      { numRuns: 40 },
    );
    // Most rows are understood: the law is tried with tubes, not with what is set aside.
    expect(tubes).toBeGreaterThan(100);
  });

  it("asks nothing: each column is matched by its own name, those for a person are left out", async () => {
    using db = testDatabase();
    await broughtIn(db, listOf([{ familyName: "B", givenName: "O", number: "1", kind: "pcn", side: "l" }]));
    const sheet = loadSheet(db, kept(db, fileOf(db)));
    expect(sheetReading(db, sheet).refusals).toEqual([]);
    const { headings } = sheet.sheet;
    expect(headings.map((title, place) => [title, sheet.answers.columns[place]])).toEqual(
      headings.map((title) => [title, sheetFields.find((field) => labelOf(field) === title) ?? LEFT_OUT]),
    );
    expect(sheet.answers.columns.filter((field) => field === LEFT_OUT)).toHaveLength(5);
  });
});

const about = () => ({ actId: newId(), lastSeen: Number.MAX_SAFE_INTEGER, patientId: "patient-1" });

function record(db: Database, form: FormKind, { tubeId, ...texts }: Texts & { tubeId?: string }): string {
  const input = { ...about(), texts, ...(tubeId !== undefined && { tubeId }) };
  return recordEvent({ db, staff: people.nurse }, form, input).tubeId ?? "";
}

const rowsOf = (db: Database): Record<string, string>[] =>
  Papa.parse<Record<string, string>>(fileOf(db).toString().slice(1), { header: true, skipEmptyLines: true })
    .data;

const toldByOthers = <T>(fact: Fact<T>): Fact<T> => sourced(fact, true);

describe("a tube recorded by form", () => {
  it("comes through a list with what it opened with and its last exchange, now as told by others", async () => {
    using first = clinicWithPatient();
    using second = testDatabase();
    const tubeId = record(first, "placed", {
      kind: "pcn",
      side: "l",
      size: "8 f",
      when: "14 aug 2025",
      plan: "",
      takes: ".035 in",
      note: "hard to flush",
    });
    record(first, "exchanged", {
      tubeId,
      size: "10 f",
      when: "3 may 2026",
      plan: "exchange by 3 feb 2027",
      elsewhere: "",
    });
    await broughtIn(second, fileOf(first));
    const tubeOf = (db: Database) => {
      const [tube] = patientIds(db).flatMap((id) => fold(loadRecord(db, id).events).tubes);
      if (tube === undefined) throw new Error("no tube");
      return tube;
    };
    const [was, is] = [tubeOf(first), tubeOf(second)];
    expect([is.catheter.since, is.tract.since]).toEqual([was.catheter.since, was.tract.since]);
    expect([is.size, is.side, is.inside.takes]).toEqual(
      [was.size, was.side, was.inside.takes].map((fact) => toldByOthers<unknown>(fact)),
    );
    expect(is.plan).toMatchObject({ act: "exchange", by: "2027-02-03" });
    expect(rowsOf(second)[0]).toMatchObject({
      named: "Left nephrostomy, 10 F",
      "Last exchanged on": "2026-05-03",
      "Placed on": "2025-08-14",
      Note: "hard to flush",
    });
  });

  it("is set aside where it stands already, and where it is out", async () => {
    using db = clinicWithPatient();
    const opened = { kind: "pcn", size: "8 f", when: "14 aug 2025", plan: "" };
    record(db, "placed", { ...opened, side: "l" });
    const out = record(db, "placed", { ...opened, side: "r" });
    record(db, "fell out", { tubeId: out, when: "?", whole: "yes" });
    expect(rowsOf(db).map((row) => [row.state, row["Removed on"]])).toEqual([
      ["in", ""],
      ["out, undecided", "out, on an unknown day"],
    ]);
    expect(await reasonsOf(db, fileOf(db))).toEqual(["tube-here-already", "tube-is-out"]);
  });
});
