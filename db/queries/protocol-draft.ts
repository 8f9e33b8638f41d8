import { asc, eq } from "drizzle-orm";
import { inserter, prepared } from "#db/prepared.ts";
import { staff } from "#db/schema/staff.ts";
import { protocolDraft, protocolVersions } from "#db/schema/versions.ts";
import type { Database } from "#db/sqlite.ts";
import type { Tx } from "#db/transaction.ts";

export type ProtocolDraftRow = typeof protocolDraft.$inferSelect;

const one = prepared((orm) => orm.select().from(protocolDraft).prepare());
const drop = prepared((orm) => orm.delete(protocolDraft).prepare());
const insert = inserter(protocolDraft);

/** The draft that nobody has signed yet. */
export const protocolDraftRow = (db: Database): ProtocolDraftRow | undefined => one(db).get();

export function dropProtocolDraft(tx: Tx): void {
  drop(tx).run();
}

export function setProtocolDraft(tx: Tx, row: Omit<ProtocolDraftRow, "id">): void {
  dropProtocolDraft(tx);
  insert(tx, { id: 1, ...row });
}

const versions = prepared((orm) =>
  orm
    .select({
      version: protocolVersions.version,
      note: protocolVersions.note,
      approvedBy: staff.fullName,
      approvedOn: protocolVersions.approvedOn,
      approvedAlone: protocolVersions.approvedAlone,
      draftedBy: protocolVersions.draftedBy,
      createdAt: protocolVersions.createdAt,
    })
    .from(protocolVersions)
    .leftJoin(staff, eq(staff.id, protocolVersions.approvedBy))
    .orderBy(asc(protocolVersions.version))
    .prepare(),
);

/** Every version of the table without its rows, the first on top. */
export const protocolHistory = (db: Database) => versions(db).all();
