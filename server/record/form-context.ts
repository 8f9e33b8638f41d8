import { clinicOf } from "#db/queries/clinic.ts";
import { allStaff } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { dayAt, type Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { FormContext } from "#shared/record/form.ts";
import { numberedTubes } from "#shared/record/numbered-tubes.ts";
import { fold } from "#shared/tube/fold.ts";

export type About = { readonly patientId: string | null; readonly tubeId: string | null };

/** What a form about this patient or tube is read beside, at that instant. Refuses a tube of another patient (`tube-unknown`). */
export function formContext(db: Database, at: Instant, { patientId, tubeId }: About): FormContext {
  const { zone } = clinicOf(db);
  const tubes = patientId === null ? [] : fold(loadRecord(db, patientId).events).tubes;
  const tube = tubes.find(({ id }) => id === tubeId) ?? null;
  if (tubeId !== null && tube === null) throw new DomainError({ code: "tube-unknown" });
  return {
    today: dayAt(at, zone),
    now: at,
    zone,
    tube,
    tubes: numberedTubes(tubes),
    opens: { tubeId: newId(), number: Math.max(0, ...tubes.map(({ number }) => number)) + 1 },
    staff: allStaff(db).filter(({ closedAt }) => closedAt === null),
  };
}
