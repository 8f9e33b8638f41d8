import { dropDraftsSavedBy, saveDraftRow } from "#db/queries/drafts.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { machineNow } from "#server/clock.ts";
import type { Person } from "#shared/access/person.ts";
import { type Instant, instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { DRAFT_LIFE_MS, DRAFT_LIMIT, type DraftContent } from "#shared/record/draft.ts";

export type Draft = { readonly form: string; readonly subject: string; readonly content: DraftContent };

/** Keeps what was typed, in place of what was kept before. Drafts of anybody that are older than 7 days go on the way. */
export function saveDraft(db: Database, staff: Pick<Person, "id">, draft: Draft): Instant {
  if (JSON.stringify(draft.content).length > DRAFT_LIMIT) {
    throw new DomainError({ code: "draft-too-long", args: { limit: DRAFT_LIMIT } });
  }
  const savedAt = machineNow();
  inTransaction(db, (tx) => {
    dropDraftsSavedBy(tx, instant(savedAt - DRAFT_LIFE_MS));
    saveDraftRow(tx, { ...draft, staffId: staff.id, savedAt });
  });
  return savedAt;
}
