import { asc, eq, sql } from "drizzle-orm";
import { inserter, prepared } from "#db/prepared.ts";
import { callLines, nextVisits, openSteps, patientStates, tubes, visits } from "#db/schema/projections.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";

export type TubeRow = typeof tubes.$inferSelect;
export type StepRow = typeof openSteps.$inferSelect;

export type VisitRow = typeof visits.$inferSelect;
export type NextVisitRow = typeof nextVisits.$inferSelect;
export type CallLineRow = typeof callLines.$inferSelect;
export type PatientStateRow = typeof patientStates.$inferSelect;

/** All that is computed from one patient's events. */
export type Projection = {
  readonly patient: PatientStateRow | undefined;
  readonly tubes: readonly TubeRow[];
  readonly steps: readonly StepRow[];
  readonly visits: readonly VisitRow[];
  readonly nextVisits: readonly NextVisitRow[];
  /** Undefined where nobody is rung about anything. */
  readonly callLine: CallLineRow | undefined;
};

const stateOfPatient = prepared((orm) =>
  orm
    .select()
    .from(patientStates)
    .where(eq(patientStates.patientId, sql.placeholder("patientId")))
    .prepare(),
);
const dropState = prepared((orm) =>
  orm
    .delete(patientStates)
    .where(eq(patientStates.patientId, sql.placeholder("patientId")))
    .prepare(),
);
const insertState = inserter(patientStates);

const tubesOfPatient = prepared((orm) =>
  orm
    .select()
    .from(tubes)
    .where(eq(tubes.patientId, sql.placeholder("patientId")))
    .orderBy(asc(tubes.id))
    .prepare(),
);

const stepsOfPatient = prepared((orm) =>
  orm
    .select()
    .from(openSteps)
    .where(eq(openSteps.patientId, sql.placeholder("patientId")))
    .orderBy(asc(openSteps.id))
    .prepare(),
);

const visitsOfPatient = prepared((orm) =>
  orm
    .select()
    .from(visits)
    .where(eq(visits.patientId, sql.placeholder("patientId")))
    .orderBy(asc(visits.id))
    .prepare(),
);
const dropVisit = prepared((orm) =>
  orm
    .delete(visits)
    .where(eq(visits.id, sql.placeholder("id")))
    .prepare(),
);
const insertVisit = inserter(visits);
const nextOfPatient = prepared((orm) =>
  orm
    .select()
    .from(nextVisits)
    .where(eq(nextVisits.patientId, sql.placeholder("patientId")))
    .orderBy(asc(nextVisits.tubeId))
    .prepare(),
);
const dropNext = prepared((orm) =>
  orm
    .delete(nextVisits)
    .where(eq(nextVisits.patientId, sql.placeholder("patientId")))
    .prepare(),
);
const insertNext = inserter(nextVisits);

const lineOfPatient = prepared((orm) =>
  orm
    .select()
    .from(callLines)
    .where(eq(callLines.patientId, sql.placeholder("patientId")))
    .prepare(),
);
const dropLine = prepared((orm) =>
  orm
    .delete(callLines)
    .where(eq(callLines.patientId, sql.placeholder("patientId")))
    .prepare(),
);
const insertLine = inserter(callLines);

const dropSteps = prepared((orm) =>
  orm
    .delete(openSteps)
    .where(eq(openSteps.patientId, sql.placeholder("patientId")))
    .prepare(),
);
const dropStep = prepared((orm) =>
  orm
    .delete(openSteps)
    .where(eq(openSteps.id, sql.placeholder("id")))
    .prepare(),
);
const dropTubes = prepared((orm) =>
  orm
    .delete(tubes)
    .where(eq(tubes.patientId, sql.placeholder("patientId")))
    .prepare(),
);
const byId = prepared((orm) =>
  orm
    .select()
    .from(tubes)
    .where(eq(tubes.id, sql.placeholder("id")))
    .prepare(),
);
const insertTube = inserter(tubes);
const insertStep = inserter(openSteps);

export const stepsOf = (db: Database, patientId: string): readonly StepRow[] =>
  stepsOfPatient(db).all({ patientId });

export const visitsOf = (db: Database, patientId: string): readonly VisitRow[] =>
  visitsOfPatient(db).all({ patientId });

export const projectionOf = (db: Database, patientId: string): Projection => ({
  patient: stateOfPatient(db).get({ patientId }),
  tubes: tubesOfPatient(db).all({ patientId }),
  steps: stepsOf(db, patientId),
  visits: visitsOf(db, patientId),
  nextVisits: nextOfPatient(db).all({ patientId }),
  callLine: lineOfPatient(db).get({ patientId }),
});

type Row = { readonly id: string };

const isSame = (a: object, b: object | undefined): boolean =>
  b !== undefined &&
  Object.entries(a).every(([name, value]) => {
    const other = (b as Readonly<Record<string, unknown>>)[name];
    return value === other || JSON.stringify(value) === JSON.stringify(other);
  });

/** The rows that another list has not, or has otherwise. */
function others<R extends Row>(rows: readonly R[], than: readonly R[]): readonly R[] {
  const byId = new Map(than.map((row) => [row.id, row]));
  return rows.filter((row) => !isSame(row, byId.get(row.id)));
}

type Sides = { readonly stood: Projection; readonly next: Projection };

/** Visits, then which of them is each tube's next. */
function replaceVisits(tx: Tx, patientId: string, { stood, next }: Sides): void {
  const gone = others(stood.visits, next.visits);
  const come = others(next.visits, stood.visits);
  const same = JSON.stringify(stood.nextVisits) === JSON.stringify(next.nextVisits);
  if (gone.length === 0 && come.length === 0 && same) return;
  dropNext(tx).run({ patientId });
  for (const { id } of gone) dropVisit(tx).run({ id });
  for (const visit of come) insertVisit(tx, visit);
  for (const row of next.nextVisits) insertNext(tx, row);
}

function replaceCallLine(tx: Tx, patientId: string, { stood, next }: Sides): void {
  const [before, after] = [stood.callLine, next.callLine];
  if (after === undefined ? before === undefined : isSame(after, before)) return;
  dropLine(tx).run({ patientId });
  if (after !== undefined) insertLine(tx, after);
}

/**
 * Writes what the events make in place of what stood. A tube whose opening was voided is gone with it. What stands as it should is left
 * alone: most readings change no tube and no step, and to write them again would cost more than the reading.
 */
export function replaceProjection(tx: Tx, patientId: string, next: Projection): void {
  const stood = projectionOf(tx, patientId);
  if (next.patient !== undefined && !isSame(next.patient, stood.patient)) {
    dropState(tx).run({ patientId });
    insertState(tx, next.patient);
  }
  replaceVisits(tx, patientId, { stood, next });
  replaceCallLine(tx, patientId, { stood, next });
  if (others(stood.tubes, next.tubes).length > 0 || others(next.tubes, stood.tubes).length > 0) {
    dropSteps(tx).run({ patientId });
    dropTubes(tx).run({ patientId });
    for (const tube of next.tubes) insertTube(tx, tube);
    for (const step of next.steps) insertStep(tx, step);
    return;
  }
  for (const { id } of others(stood.steps, next.steps)) dropStep(tx).run({ id });
  for (const step of others(next.steps, stood.steps)) insertStep(tx, step);
}

/** Before a rebuild: nothing computed is left. */
export function emptyProjections(tx: Tx): void {
  tx.orm.delete(callLines).run();
  tx.orm.delete(openSteps).run();
  tx.orm.delete(nextVisits).run();
  tx.orm.delete(visits).run();
  tx.orm.delete(tubes).run();
  tx.orm.delete(patientStates).run();
}

export const tubeById = (db: Database, id: string): TubeRow | undefined => byId(db).get({ id });
