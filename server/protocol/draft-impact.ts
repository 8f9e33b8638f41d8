import { newestVersions } from "#db/queries/versions.ts";
import type { Database } from "#db/sqlite.ts";
import { type Impact, impactOf } from "#server/dates/impact.ts";
import { openDraft } from "#server/protocol/draft.ts";
import { calendarOf } from "#server/record/books.ts";
import { DomainError } from "#shared/errors/refusal.ts";

/** Whom the open draft would touch if it were signed now: what signing then proposes. Throws `draft-missing`. */
export function draftImpact(
  db: Database,
  { page }: { page: number },
): Impact & { readonly revision: number } {
  const draft = openDraft(db);
  if (draft === null) throw new DomainError({ code: "draft-missing" });
  const { protocol, revision } = draft;
  const calendar = calendarOf(db, newestVersions(db)?.calendar ?? 1);
  return { ...impactOf(db, { protocol, calendar }, page), revision };
}
