import { clinicOf } from "#db/queries/clinic.ts";
import { stepsOf } from "#db/queries/projections.ts";
import { allStaff } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { loadRecord, type PatientRecord } from "#server/record/load-record.ts";
import { refuseClosedRecord } from "#server/record/refuse-closed-record.ts";
import { shelfOf } from "#server/shelf/shelf-of.ts";
import type { Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { FormContext } from "#shared/record/form.ts";
import { formBeside } from "#shared/record/form-beside.ts";
import type { Why } from "#shared/step/step.ts";
import { fold } from "#shared/tube/fold.ts";

export type About = {
  readonly patientId: string | null;
  readonly tubeId: string | null;
  /** The patient's record, where it has been read already. */
  readonly loaded?: PatientRecord;
};

/** Why the tube's alarm stands, as it was last computed. */
function alarmOf(db: Database, { patientId, tubeId }: About): readonly Why[] {
  if (patientId === null || tubeId === null) return [];
  const alarm = stepsOf(db, patientId).find((step) => step.tubeId === tubeId && step.kind === "alarm");
  return (alarm?.why ?? []) as readonly Why[];
}

/** What a form about this patient or tube is read beside, at that instant. Refuses a tube of another patient (`tube-unknown`). */
export function formContext(db: Database, at: Instant, { patientId, tubeId, loaded }: About): FormContext {
  const { zone } = clinicOf(db);
  const record = patientId === null ? null : (loaded ?? loadRecord(db, patientId));
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
    alarm: alarmOf(db, { patientId, tubeId }),
  });
}
