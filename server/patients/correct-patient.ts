import {
  addPatientChange,
  identifiersOf,
  type PatientRow,
  patientById,
  updatePatient,
} from "#db/queries/patients.ts";
import type { Tx } from "#db/transaction.ts";
import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import { patientColumns, readDetails, writeIdentifiers } from "#server/patients/register-patient.ts";
import { writeProjection } from "#server/record/append.ts";
import { loadRecord } from "#server/record/load-record.ts";
import type { Doing } from "#server/record/record-event.ts";
import { refuseClosedRecord } from "#server/record/refuse-closed-record.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { CorrectingPatient } from "#shared/record/act.ts";
import { type PatientDetails, patientDetailsSchema } from "#shared/record/patient/patient-details.ts";

/** Identity and contact as they stand. */
export function detailsOf(tx: Pick<Tx, "sqlite" | "orm">, row: PatientRow): PatientDetails {
  const { familyName, givenName, birthOn, language, needsInterpreter, contact } = row;
  const identifiers = identifiersOf(tx, row.id).map(({ issuer, value }) => ({ issuer, value }));
  return patientDetailsSchema.parse({
    familyName,
    givenName,
    birthOn,
    identifiers,
    language,
    needsInterpreter,
    contact,
  });
}

/** Corrects who a patient is or how they are reached; what stood is kept. A birth date may change which rows apply. */
export function correctPatient(
  { db, staff }: Doing,
  input: CorrectingPatient,
): { patientId: string; actId: string } {
  const { actId, patientId, texts, lastUpdatedAt } = input;
  return inAct({ db, staff, actId, command: "patient: correct", input }, (tx, at) => {
    const row = patientById(tx, patientId);
    if (row === undefined) throw new DomainError({ code: "patient-unknown" });
    refuseClosedRecord(tx, row);
    if (row.updatedAt !== lastUpdatedAt) {
      throw new DomainError({ code: "changed-meanwhile", args: { entries: "identity or contact" } });
    }
    const before = detailsOf(tx, row);
    const after = readDetails(tx, at, texts);
    updatePatient(tx, { ...row, ...patientColumns(after, at) });
    writeIdentifiers(tx, patientId, after);
    addPatientChange(tx, { id: newId(), patientId, actId, before, after, at });
    writeProjection(tx, loadRecord(tx, patientId));
    return { patientId, actId };
  });
}
