import { and, asc, eq, isNull, sql } from "drizzle-orm";
import { prepared } from "#db/prepared.ts";
import { proposals } from "#db/schema/projections.ts";
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

/** Changes of dates that nobody has confirmed yet. */
export const openProposals = (db: Database, tubeId: string): readonly ProposalRow[] =>
  ofTube(db).all({ tubeId });

/** Proposes once: the same proposal found again changes nothing. */
export function propose(tx: Tx, row: ProposalRow): void {
  tx.orm.insert(proposals).values(row).onConflictDoNothing().run();
}

export function settleProposals(tx: Tx, tubeId: string, eventId: string): void {
  tx.orm
    .update(proposals)
    .set({ settledByEvent: eventId })
    .where(and(eq(proposals.tubeId, tubeId), isNull(proposals.settledByEvent)))
    .run();
}
