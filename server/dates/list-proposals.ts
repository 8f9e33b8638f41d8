import { countOpenProposals, openProposalsPage } from "#db/queries/proposals.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import type { ProposedWindow } from "#server/dates/proposed-days.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** Rows of one page, and so the most that one press confirms. */
const PAGE = 100;

/** Dates that newer tables would give and that nobody has confirmed, a page of them, what would have to be done first on top. */
export function listProposals(db: Database, { page }: { page: number }) {
  const on = today(db);
  const rows = openProposalsPage(db, { limit: PAGE, offset: page * PAGE });
  return {
    today: on,
    count: countOpenProposals(db),
    pages: Math.max(1, Math.ceil(countOpenProposals(db) / PAGE)),
    lines: rows.map(({ stepKind, stood, proposed, familyName, givenName, ...row }) => ({
      ...row,
      patient: `${familyName}, ${givenName}`,
      step: stepKind as StepKind,
      stood: stood as ProposedWindow | null,
      proposed: proposed as ProposedWindow | null,
    })),
  };
}
