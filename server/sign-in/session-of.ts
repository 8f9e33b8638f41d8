import { sessionByHash } from "#db/queries/sessions.ts";
import type { StaffRow } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { sessionLimits } from "#server/sign-in/limits.ts";
import type { Session } from "#server/sign-in/session.ts";
import { tokenHashOf } from "#server/sign-in/token.ts";
import type { Person } from "#shared/access/person.ts";
import { type Instant, instant } from "#shared/day/instant.ts";

const personOf = ({ id, userName, fullName, role, isApprover }: StaffRow): Person => ({
  id,
  userName,
  fullName,
  role,
  isApprover,
});

/** The session of a cookie's token; null when there is none, it has ended, or the account was closed. Does not count as use. */
export function sessionOf(db: Database, token: string, at: Instant): Session | null {
  const tokenHash = tokenHashOf(token);
  const found = sessionByHash(db, tokenHash);
  if (found === undefined || found.person.closedAt !== null) return null;
  const { lastSeenAt, endsAt } = found.session;
  const idleEndsAt = instant(lastSeenAt + sessionLimits.idleMs);
  if (at >= idleEndsAt || at >= endsAt) return null;
  return { tokenHash, person: personOf(found.person), lastSeenAt, idleEndsAt, endsAt };
}
