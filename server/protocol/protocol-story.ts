import { clinicOf } from "#db/queries/clinic.ts";
import { protocolHistory } from "#db/queries/protocol-draft.ts";
import { allStaff } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";

/** Every version of the table, the newest on top: who drafted it, who approved it and when, and why. */
export function protocolStory(db: Database) {
  const names = new Map(allStaff(db).map(({ id, fullName }) => [id, fullName]));
  const versions = protocolHistory(db).map(({ draftedBy, ...version }) => ({
    ...version,
    draftedBy: (draftedBy ?? []).flatMap((id) => names.get(id) ?? []),
  }));
  return { zone: clinicOf(db).zone, versions: versions.toReversed() };
}
