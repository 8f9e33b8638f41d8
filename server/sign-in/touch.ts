import { touchSession } from "#db/queries/sessions.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { sessionLimits } from "#server/sign-in/limits.ts";
import type { Session } from "#server/sign-in/session.ts";
import { type Instant, instant } from "#shared/day/instant.ts";

/** Counts as use: the idle time begins again. Stored only when the last store is some while ago. */
export function touch(db: Database, session: Session, at: Instant): Session {
  if (at - session.lastSeenAt < sessionLimits.touchMs) return session;
  inTransaction(db, (tx) => touchSession(tx, session.tokenHash, at));
  return { ...session, lastSeenAt: at, idleEndsAt: instant(at + sessionLimits.idleMs) };
}
