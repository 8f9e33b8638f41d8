import { describe, expect, it } from "vitest";
import { viewSheet } from "#server/sheet/view-sheet.ts";
import type { Answers } from "#shared/sheet/answers.ts";
import { labelOf, type SheetField, sheetFields } from "#shared/sheet/sheet-fields.ts";
import { printPlan } from "#shared/words/plan.ts";
import { numberText, patientSays, tubeSays, unsaidSentence } from "#shared/words/row-preview.ts";
import { testDatabase } from "#tests/support/database.ts";
import { broughtIn, kept } from "#tests/support/sheet.ts";

/** Two ways to say a name, a plan or an end: a row has one of them. */
const elsewhere = ["wholeName", "exchangeBy", "removeBy", "reviewBy", "removedOn"] as const;
type Said = Exclude<SheetField, (typeof elsewhere)[number]>;
const isSaid = (field: SheetField): field is Said => !elsewhere.some((other) => other === field);

/** What a row types into each column, and where it stands in the preview. */
const cells: Readonly<Record<Said, readonly [typed: string, shown: string]>> = {
  familyName: ["Brackenfold", "Brackenfold"],
  givenName: ["Ottoline", "Ottoline"],
  birthOn: ["3 apr 1951", "1951-04-03"],
  number: ["004711", "004711 (Quillmere)"],
  issuer: ["Quillmere", "004711 (Quillmere)"],
  secondNumber: ["T-90417", "second number T-90417 (Saltmarsh)"],
  secondIssuer: ["Saltmarsh", "second number T-90417 (Saltmarsh)"],
  telephones: ["555 0117 mornings; 555 0118", "telephone 555 0117 (mornings); 555 0118"],
  language: ["Welsh", "speaks Welsh"],
  needsInterpreter: ["yes", "needs an interpreter"],
  alternateName: ["Ivo, her son", "alternate contact Ivo, her son, 555 0119, nobody has asked"],
  alternateTelephone: ["555 0119", "555 0119"],
  homeNurse: ["Nell Nurseby", "home nurse Nell Nurseby"],
  referrer: ["Dr Refer", "referrer Dr Refer"],
  familyDoctor: ["Dr Famley", "family doctor Dr Famley"],
  responsibleService: ["urology", "responsible service urology"],
  kind: ["nephrostomy", "Left nephrostomy, about 8 F, locking loop"],
  side: ["~left", "side estimated"],
  size: ["~8 F", "about 8 F"],
  exchangedOn: ["2025-11-02 09:15", "2025-11-02 09:15"],
  placedOn: ["2025-03-14", "2025-03-14"],
  plan: ["exchange by 14 jan 2027 Dr Planner because of a trip", "Exchange by Thu 14 Jan 2027, Dr Planner"],
  from: ["Saltmarsh Infirmary", "from Saltmarsh Infirmary"],
  takes: [".035 in", "takes 0.035 in"],
  retention: ["pigtail", "about 8 F, locking loop"],
  fullLength: ["25", "25 cm long"],
  externalLength: ["12", "12 cm outside"],
  flushOrder: ["10 mL x 3 a day", "flush ordered: 10 mL x 3 a day"],
  balloon: ["~9.5", "about 9.5 mL in the balloon"],
  cavity: ["upper pole", "upper pole"],
  organ: ["bladder", "organ bladder"],
  route: ["through the flank", "through the flank"],
  indication: ["a stone", "a stone"],
  role: ["intermittent", "role intermittent"],
  mode: ["capped", "mode capped"],
  note: ["hard to flush", "hard to flush"],
};

const said = sheetFields.filter(isSaid);
const quoted = (cell: string): string => `"${cell}"`;
const listOf = (fields: readonly SheetField[], row: readonly string[]): string =>
  [fields.map(labelOf), row].map((line) => line.map(quoted).join(",")).join("\r\n");

const answers: Partial<Answers> = { dateOrder: "day first" };

type Db = ReturnType<typeof testDatabase>;

/** Everything that the preview shows of the first row that comes in, a text each. */
async function shownOf(db: Db, list: string): Promise<readonly string[]> {
  const view = await viewSheet(db, { sheetId: kept(db, list, answers), page: 0 });
  const [line] = view.coming;
  if (line === undefined) throw new Error(JSON.stringify(view.aside));
  const { patient, tube } = line;
  const { issuer } = view.answers;
  return [
    patient.familyName,
    patient.givenName,
    patient.birthOn ?? "born ?",
    ...patient.identifiers.slice(0, 1).map((number) => numberText(number, issuer)),
    ...patientSays(patient, issuer),
    tube.name,
    [tube.since.earliest, tube.time].filter(Boolean).join(" "),
    tube.tractSince.earliest ?? "",
    ...tubeSays(tube.opening),
    tube.opening.plan === null ? "" : printPlan(tube.opening.plan),
    tube.opening.note ?? "",
  ];
}

describe("a row in the preview", () => {
  it("shows what each of its columns says", async () => {
    using db = testDatabase();
    const list = listOf(
      said,
      said.map((field) => cells[field][0]),
    );
    const shown = await shownOf(db, list);
    for (const field of said)
      expect(shown, field).toEqual(expect.arrayContaining([expect.stringContaining(cells[field][1])]));
  });

  it("repeats nothing that goes for every row", async () => {
    using db = testDatabase();
    const row = ["Brackenfold", "Ottoline", "004711", "abscess drain"];
    expect(await shownOf(db, listOf(["familyName", "givenName", "number", "kind"], row))).toEqual([
      "Brackenfold",
      "Ottoline",
      "born ?",
      "004711",
      "telephone unknown",
      "Abscess drain, size unknown",
      "",
      "",
      "",
      "",
    ]);
    expect(unsaidSentence("this hospital")).toContain("its record number is issued by this hospital");
  });

  it("says of a patient whose record is here that it is, for nothing of the patient is written then", async () => {
    using db = testDatabase();
    const row = "name,mrn,phone,tube\r\n";
    await broughtIn(db, `${row}"Brackenfold, Ottoline",004711,555 0117,PCN L`);
    const again = kept(db, `${row}"Brackenfold, Ottoline",004711,555 0118,perc chole`);
    const { coming } = await viewSheet(db, { sheetId: again, page: 0 });
    expect(coming.map(({ patient }) => patient.isHere)).toEqual([true]);
  });
});
