import { clinicOf } from "#db/queries/clinic.ts";
import { allStaff } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { refuseClosedRecord } from "#server/record/refuse-closed-record.ts";
import { shelfOf } from "#server/shelf/shelf-of.ts";
import type { Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { FormContext } from "#shared/record/form.ts";
import { formBeside } from "#shared/record/form-beside.ts";
import { fold } from "#shared/tube/fold.ts";

export type About = { readonly patientId: string | null; readonly tubeId: string | null };

/** What a form about this patient or tube is read beside, at that instant. Refuses a tube of another patient (`tube-unknown`). */
export function formContext(db: Database, at: Instant, { patientId, tubeId }: About): FormContext {
  const { zone } = clinicOf(db);
  const record = patientId === null ? null : loadRecord(db, patientId);
  if (record !== null) refuseClosedRecord(db, record.patient);
  const tubes = record === null ? [] : fold(record.events).tubes;
  const tube = tubes.find(({ id }) => id === tubeId) ?? null;
  if (tubeId !== null && tube === null) throw new DomainError({ code: "tube-unknown" });
  return formBeside({
    at,
    zone,
    tubes,
    tube,
    newTubeId: newId(),
    staff: allStaff(db).filter(({ closedAt }) => closedAt === null),
    shelf: shelfOf(db),
  });
}
