import { expect, it } from "vitest";
import { patientById } from "#db/queries/patients.ts";
import { protocolHistory } from "#db/queries/protocol-draft.ts";
import { emptyDatabase } from "#tests/support/database.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";
import { bringIn, exportedLines, inForm } from "#tests/support/record-file.ts";

/** The file of a clinic with one patient, of whom that column says that. */
function fileOf(version: 1 | 2, needed: boolean | null): string[] {
  using db = clinicWithPatient();
  return inForm(version, exportedLines(db)).map((line) =>
    line.replace('"needs_interpreter":null', `"needs_interpreter":${needed}`),
  );
}

it.each([
  [1, false, null],
  [1, true, true],
  [2, false, false],
  [2, true, true],
  [2, null, null],
] as const)("a file of form %s: an interpreter %s is read as %s", (version, written, read) => {
  const lines = fileOf(version, written);
  expect(lines[0]).toContain(`"version":${version},`);
  expect(lines.some((line) => line.includes(`"needs_interpreter":${written}`))).toBe(true);
  using db = emptyDatabase();
  bringIn(db, lines);
  expect(patientById(db, "patient-1")?.needsInterpreter).toBe(read);
});

it("a file of form 4, whose versions of the protocol name no author, is read as that nobody kept who drafted them", () => {
  using filled = clinicWithPatient();
  const lines = inForm(4, exportedLines(filled));
  expect(lines.join()).not.toContain("drafted_by");
  using db = emptyDatabase();
  bringIn(db, lines);
  expect(protocolHistory(db)).toMatchObject([{ version: 1, draftedBy: null, approvedAlone: null }]);
});
