import { patientById } from "#db/queries/patients.ts";
import { orUnknown, patientColumns, secondNumber, UNKNOWN, yesNo } from "#server/export/csv/cells.ts";
import type { CsvTable } from "#server/export/csv/csv-table.ts";
import { eachPatient } from "#server/export/csv/each-patient.ts";
import type { PatientView } from "#server/patients/view-patient.ts";
import { dayAt } from "#shared/day/instant.ts";
import type { Contact } from "#shared/record/patient/patient-details.ts";
import { alternateText, telephonesText } from "#shared/words/contact.ts";

type Row = PatientView & { readonly contact: Contact; readonly joinedInto: string | null };

/** Whether somebody is followed under this record. */
function standing({ patient, zone, joinedInto }: Row): string {
  if (patient.withdrawnAt !== null) return `withdrawn ${dayAt(patient.withdrawnAt, zone)}`;
  return joinedInto === null ? "in use" : `joined with the record of ${joinedInto}`;
}

export const patientsTable: CsvTable<Row> = {
  columns: {
    ...patientColumns,
    "second number": secondNumber,
    record: standing,
    language: ({ patient }) => orUnknown(patient.language),
    "needs an interpreter": ({ patient }) =>
      patient.needsInterpreter === null ? UNKNOWN : yesNo(patient.needsInterpreter),
    telephones: ({ contact }) => telephonesText(contact) ?? UNKNOWN,
    "time zone": ({ contact }) => orUnknown(contact.livesIn ?? null),
    "alternate contact": ({ contact }) => alternateText(contact) ?? UNKNOWN,
    "home nurse": ({ contact }) => orUnknown(contact.homeNurse),
    referrer: ({ contact }) => orUnknown(contact.referrer),
    "family doctor": ({ contact }) => orUnknown(contact.familyDoctor),
    "responsible service": ({ contact }) => orUnknown(contact.responsibleService),
    "tubes recorded": ({ state }) => state.tubes.length,
    "steps open": ({ steps }) => steps.length,
  },
  *rows(db) {
    for (const view of eachPatient(db)) {
      const { joinedInto, contact } = view.patient;
      const other = joinedInto === null ? undefined : patientById(db, joinedInto);
      yield {
        ...view,
        contact: contact as Contact,
        joinedInto: other === undefined ? null : `${other.familyName}, ${other.givenName}`,
      };
    }
  },
};
