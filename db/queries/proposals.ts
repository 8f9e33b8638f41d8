import { and, asc, count, eq, inArray, isNull, sql } from "drizzle-orm";
import { inserter, prepared } from "#db/prepared.ts";
import { patientIdentifiers, patients } from "#db/schema/patients.ts";
import { proposals, tubes } from "#db/schema/projections.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";

export type ProposalRow = typeof proposals.$inferSelect;

const ofTube = prepared((orm) =>
  orm
    .select()
    .from(proposals)
    .where(and(eq(proposals.tubeId, sql.placeholder("tubeId")), isNull(proposals.settledByEvent)))
    .orderBy(asc(proposals.createdAt), asc(proposals.id))
    .prepare(),
);

const ofPatient = prepared((orm) =>
  orm
    .select()
    .from(proposals)
    .where(and(eq(proposals.patientId, sql.placeholder("patientId")), isNull(proposals.settledByEvent)))
    .orderBy(asc(proposals.createdAt), asc(proposals.id))
    .prepare(),
);

const drop = prepared((orm) =>
  orm
    .delete(proposals)
    .where(and(eq(proposals.id, sql.placeholder("id")), isNull(proposals.settledByEvent)))
    .prepare(),
);

const insert = inserter(proposals);

/** Changes of dates that nobody has confirmed yet. */
export const openProposals = (db: Database, tubeId: string): readonly ProposalRow[] =>
  ofTube(db).all({ tubeId });

export const openProposalsOfPatient = (db: Database, patientId: string): readonly ProposalRow[] =>
  ofPatient(db).all({ patientId });

/** Proposes once: the same proposal found again changes nothing. */
export function propose(tx: Tx, row: ProposalRow): void {
  tx.orm.insert(proposals).values(row).onConflictDoNothing().run();
}

export const addProposal = insert;

/** Of one that somebody confirmed nothing is dropped. */
export function dropProposal(tx: Tx, id: string): void {
  drop(tx).run({ id });
}

/** Keeps what an event confirmed, whether its row still stands or was dropped since. */
export function settleProposals(tx: Tx, rows: readonly ProposalRow[], settledByEvent: string): void {
  for (const row of rows) {
    dropProposal(tx, row.id);
    insert(tx, { ...row, settledByEvent });
  }
}

/** The day by which what is proposed would be done; of a step that would go, the day that it has. */
const proposedDay = sql<string | null>`coalesce(
  json_extract(${proposals.proposed}, '$.latestOn'), json_extract(${proposals.proposed}, '$.targetOn'),
  json_extract(${proposals.stood}, '$.latestOn'), json_extract(${proposals.stood}, '$.targetOn'))`;

const unsettled = prepared((orm) =>
  orm
    .select({
      id: proposals.id,
      patientId: proposals.patientId,
      familyName: patients.familyName,
      givenName: patients.givenName,
      birthOn: patients.birthOn,
      number: patientIdentifiers.value,
      tubeId: proposals.tubeId,
      tube: tubes.name,
      stepKind: proposals.stepKind,
      stood: proposals.stood,
      proposed: proposals.proposed,
      cause: proposals.cause,
    })
    .from(proposals)
    .innerJoin(patients, eq(patients.id, proposals.patientId))
    .innerJoin(tubes, eq(tubes.id, proposals.tubeId))
    .leftJoin(
      patientIdentifiers,
      and(eq(patientIdentifiers.patientId, proposals.patientId), eq(patientIdentifiers.place, 1)),
    )
    .where(isNull(proposals.settledByEvent))
    .orderBy(asc(proposedDay), asc(proposals.patientId), asc(proposals.tubeId), asc(proposals.stepKind))
    .limit(sql.placeholder("limit"))
    .offset(sql.placeholder("offset"))
    .prepare(),
);

const unsettledCount = prepared((orm) =>
  orm.select({ rows: count() }).from(proposals).where(isNull(proposals.settledByEvent)).prepare(),
);

/** What nobody has confirmed yet, what would have to be done first on top. */
export const openProposalsPage = (db: Database, page: { readonly limit: number; readonly offset: number }) =>
  unsettled(db).all(page);

export const countOpenProposals = (db: Database): number => unsettledCount(db).get()?.rows ?? 0;

/** Whose dates are proposed to move. */
export const patientsWithOpenProposals = (db: Database): readonly string[] =>
  db.orm
    .selectDistinct({ patientId: proposals.patientId })
    .from(proposals)
    .where(isNull(proposals.settledByEvent))
    .all()
    .map(({ patientId }) => patientId);

/** Those of these ids that nobody has confirmed yet. */
export const openProposalsOf = (db: Database, ids: readonly string[]): readonly ProposalRow[] =>
  db.orm
    .select()
    .from(proposals)
    .where(and(inArray(proposals.id, [...ids]), isNull(proposals.settledByEvent)))
    .orderBy(asc(proposals.patientId), asc(proposals.tubeId), asc(proposals.id))
    .all();
