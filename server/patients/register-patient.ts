import {
  addPatient,
  addPatientChange,
  identifierByNumber,
  replaceIdentifiers,
} from "#db/queries/patients.ts";
import type { Tx } from "#db/transaction.ts";
import { inAct } from "#server/act.ts";
import { newId } from "#server/ids.ts";
import { formContext } from "#server/record/form-context.ts";
import type { Doing } from "#server/record/record-event.ts";
import type { Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Registering } from "#shared/record/act.ts";
import type { Contact, PatientDetails } from "#shared/record/patient/patient-details.ts";
import { patientForm } from "#shared/record/patient/patient-form.ts";
import { searchText } from "#shared/record/patient/search-text.ts";

/** Telephones under which somebody may be looked for: the patient's own, and that of the alternate contact. */
const telephonesOf = ({ telephones, alternate }: Contact): readonly string[] => [
  ...telephones.map(({ number }) => number),
  ...(alternate?.telephone == null ? [] : [alternate.telephone]),
];

/** The columns of a patient's row that come from details. */
export const patientColumns = (details: PatientDetails, updatedAt: Instant) => ({
  familyName: details.familyName,
  givenName: details.givenName,
  birthOn: details.birthOn,
  language: details.language,
  needsInterpreter: details.needsInterpreter,
  contact: details.contact,
  search: searchText({
    familyName: details.familyName,
    givenName: details.givenName,
    numbers: details.identifiers.map(({ value }) => value),
    telephones: telephonesOf(details.contact),
  }),
  updatedAt,
});

/** Refuses a record number that another patient has: one person under two records is two halves of a follow-up. */
export function writeIdentifiers(tx: Tx, patientId: string, { identifiers }: PatientDetails): void {
  for (const number of identifiers) {
    const owner = identifierByNumber(tx, number)?.patientId;
    if (owner !== undefined && owner !== patientId) {
      throw new DomainError({ code: "number-taken", field: "number", args: { issuer: number.issuer } });
    }
  }
  const rows = identifiers.map(
    (number, index) => ({ patientId, place: index === 0 ? 1 : 2, ...number }) as const,
  );
  replaceIdentifiers(tx, patientId, rows);
}

/** What was typed as details, or every field to mend. */
export function readDetails(tx: Tx, at: Instant, texts: Registering["texts"]): PatientDetails {
  const read = patientForm.read(texts, formContext(tx, at, { patientId: null, tubeId: null }));
  if (!read.ok) throw new DomainError(read.refusals);
  return read.entry;
}

type Opening = { readonly actId: string; readonly at: Instant };

/** Opens a patient's record within an act, and returns its id. */
export function openPatientRecord(tx: Tx, details: PatientDetails, { actId, at }: Opening): string {
  const patientId = newId();
  addPatient(tx, { id: patientId, ...patientColumns(details, at), withdrawnAt: null, joinedInto: null });
  writeIdentifiers(tx, patientId, details);
  addPatientChange(tx, { id: newId(), patientId, actId, before: null, after: details, at });
  return patientId;
}

/** Opens a patient's record from the typed form. */
export function registerPatient(
  { db, staff }: Doing,
  input: Registering,
): { patientId: string; actId: string } {
  const { actId, texts } = input;
  return inAct({ db, staff, actId, command: "patient: register", input }, (tx, at) => {
    return { patientId: openPatientRecord(tx, readDetails(tx, at, texts), { actId, at }), actId };
  });
}
