import { type DraftKey, draftByKey } from "#db/queries/drafts.ts";
import type { Database } from "#db/sqlite.ts";
import { machineNow } from "#server/clock.ts";
import { DRAFT_LIFE_MS, type DraftContent, draftContentSchema } from "#shared/record/draft.ts";

/** What this person typed and did not save; null when there is nothing, when 7 days have passed, or an earlier version wrote it otherwise. */
export function loadDraft(db: Database, key: DraftKey): DraftContent | null {
  const row = draftByKey(db, key);
  if (row === undefined || row.savedAt <= machineNow() - DRAFT_LIFE_MS) return null;
  const content = draftContentSchema.safeParse(row.content);
  return content.success ? content.data : null;
}
