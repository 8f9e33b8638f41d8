import { countOpenProposals, openProposalsPage } from "#db/queries/proposals.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import type { ProposedWindow } from "#server/dates/proposed-days.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** Rows of one page, and so the most that one press confirms. */
const PAGE = 100;

/** Dates that newer tables would give and that nobody has confirmed: one page, counted from 1, what would have to be done first on top. */
export function listProposals(db: Database, { page }: { page: number }) {
  const rows = openProposalsPage(db, { limit: PAGE, offset: (page - 1) * PAGE });
  const count = countOpenProposals(db);
  return {
    today: today(db),
    count,
    before: (page - 1) * PAGE,
    hasNext: count > page * PAGE,
    lines: rows.map(({ patientId, familyName, givenName, birthOn, number, ...row }) => ({
      id: row.id,
      patient: { id: patientId, familyName, givenName, birthOn, number },
      tube: { id: row.tubeId, name: row.tube },
      cause: row.cause,
      step: row.stepKind as StepKind,
      stood: row.stood as ProposedWindow | null,
      proposed: row.proposed as ProposedWindow | null,
    })),
  };
}
