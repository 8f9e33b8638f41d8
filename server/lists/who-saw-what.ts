import { actsBefore } from "#db/queries/acts.ts";
import { clinicOf } from "#db/queries/clinic.ts";
import { eventsOfAct } from "#db/queries/events.ts";
import { patientById } from "#db/queries/patients.ts";
import { tubeById } from "#db/queries/projections.ts";
import { readingsOfAct } from "#db/queries/readings.ts";
import { readsBefore } from "#db/queries/reads.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { instant } from "#shared/day/instant.ts";

const SHOWN = 100;

/** Whom a look or an act concerned. Null: nobody, as a list, or somebody whose record is not there. */
export type Concerned = {
  readonly patientId: string;
  readonly familyName: string;
  readonly givenName: string;
  /** Null where it was the whole record, or the tube's opening has been voided. */
  readonly tube: { readonly id: string; readonly name: string } | null;
} | null;

function concerned(db: Database, patientId: string | undefined, tubeId: string | null): Concerned {
  const patient = patientId === undefined ? undefined : patientById(db, patientId);
  if (patient === undefined) return null;
  const tube = tubeId === null ? undefined : tubeById(db, tubeId);
  return {
    patientId: patient.id,
    familyName: patient.familyName,
    givenName: patient.givenName,
    tube: tube === undefined ? null : { id: tube.id, name: tube.name },
  };
}

function concernedByRead(db: Database, kind: string, id: string): Concerned {
  if (kind === "patient") return concerned(db, id, null);
  return kind === "tube" ? concerned(db, tubeById(db, id)?.patientId, id) : null;
}

function concernedByAct(db: Database, actId: string): Concerned {
  const [event] = eventsOfAct(db, actId);
  if (event !== undefined) return concerned(db, event.patientId, null);
  const [reading] = readingsOfAct(db, actId);
  return concerned(db, reading?.patientId, reading?.tubeId ?? null);
}

/** The newest looks and acts, for the lead: who saw whom, who did what, when. */
export function whoSawWhat(db: Database) {
  const before = instant(now(db) + 1);
  return {
    zone: clinicOf(db).zone,
    reads: readsBefore(db, before, SHOWN).map((read) => ({
      ...read,
      concerned: concernedByRead(db, read.subjectKind, read.subjectId),
    })),
    acts: actsBefore(db, before, SHOWN).map((act) => ({ ...act, concerned: concernedByAct(db, act.actId) })),
  };
}
