import { addSession, dropSession, dropSessionsEndedBy } from "#db/queries/sessions.ts";
import type { Tx } from "#db/transaction.ts";
import { sessionLimits } from "#server/sign-in/limits.ts";
import { newToken, tokenHashOf } from "#server/sign-in/token.ts";
import { type Instant, instant } from "#shared/day/instant.ts";

/** `replaces`: the token that the browser held before. It ends with this sign-in, so none is carried from one to the next. */
export type Opening = { readonly staffId: string; readonly replaces: string | null };

/** Returns the token for the cookie. Sessions that are over are swept away on the way. */
export function openSession(tx: Tx, { staffId, replaces }: Opening, at: Instant): string {
  const token = newToken();
  if (replaces !== null) dropSession(tx, tokenHashOf(replaces));
  dropSessionsEndedBy(tx, at);
  addSession(tx, {
    tokenHash: tokenHashOf(token),
    staffId,
    createdAt: at,
    lastSeenAt: at,
    endsAt: instant(at + sessionLimits.absoluteMs),
  });
  return token;
}
