import { actsBefore } from "#db/queries/acts.ts";
import { clinicOf } from "#db/queries/clinic.ts";
import { eventsOfAct } from "#db/queries/events.ts";
import { patientById } from "#db/queries/patients.ts";
import { tubeById } from "#db/queries/projections.ts";
import { readingsOfAct } from "#db/queries/readings.ts";
import { readsBefore } from "#db/queries/reads.ts";
import type { Rows } from "#db/queries/rows.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { instant } from "#shared/day/instant.ts";

/** Lines of one page of each table. */
export const AUDIT_PAGE = 100;

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
  // A paper of one patient names them, a paper of a day the day.
  if (kind === "patient" || kind === "print") return concerned(db, id, null);
  return kind === "tube" ? concerned(db, tubeById(db, id)?.patientId, id) : null;
}

function concernedByAct(db: Database, actId: string): Concerned {
  const [event] = eventsOfAct(db, actId);
  if (event !== undefined) return concerned(db, event.patientId, null);
  const [reading] = readingsOfAct(db, actId);
  return concerned(db, reading?.patientId, reading?.tubeId ?? null);
}

/** A page of a list, counted from 1, from the rows that it was asked for: one more than it shows. */
const pageOf = <Row>(page: number, rowsAt: (rows: Rows) => readonly Row[]) => {
  const rows = rowsAt({ limit: AUDIT_PAGE + 1, skip: (page - 1) * AUDIT_PAGE });
  return { page, rows: rows.slice(0, AUDIT_PAGE), hasNext: rows.length > AUDIT_PAGE };
};

/** Looks and acts, the newest first, a page of each: who saw whom, who did what, when. For the lead. */
export function whoSawWhat(db: Database, { seen = 1, done = 1 }: { seen?: number; done?: number } = {}) {
  const before = instant(now(db) + 1);
  return {
    zone: clinicOf(db).zone,
    reads: pageOf(seen, (rows) =>
      readsBefore(db, before, rows).map((read) => ({
        ...read,
        concerned: concernedByRead(db, read.subjectKind, read.subjectId),
      })),
    ),
    acts: pageOf(done, (rows) =>
      actsBefore(db, before, rows).map((act) => ({ ...act, concerned: concernedByAct(db, act.actId) })),
    ),
  };
}
