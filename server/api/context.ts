import type { Database } from "#db/sqlite.ts";
import { machineNow } from "#server/clock.ts";
import { tokenIn } from "#server/sign-in/cookie.ts";
import type { Session } from "#server/sign-in/session.ts";
import { sessionOf } from "#server/sign-in/session-of.ts";
import { touch } from "#server/sign-in/touch.ts";
import type { Person } from "#shared/access/person.ts";

/** What every procedure gets. `sentToken`: the browser held a token, so without a session one has ended. */
export type Context = {
  readonly db: Database;
  readonly session: Session | null;
  readonly staff: Person | null;
  readonly sentToken: boolean;
};

/** Reads who asks from the cookie. Counts as use of the session. */
export function createContext(db: Database, headers: Headers): Context {
  const token = tokenIn(headers);
  const at = machineNow();
  const found = token === null ? null : sessionOf(db, token, at);
  const session = found === null ? null : touch(db, found, at);
  return { db, session, staff: session?.person ?? null, sentToken: token !== null };
}
