import { refuseFromElsewhere } from "#app/api/_web/refuse-from-elsewhere.ts";
import { refusing } from "#app/api/_web/refusing.ts";
import { machineNow } from "#server/clock.ts";
import { database } from "#server/database.ts";
import { tokenIn } from "#server/sign-in/cookie.ts";
import type { Session } from "#server/sign-in/session.ts";
import { sessionLeft } from "#server/sign-in/session-left.ts";
import { sessionOf } from "#server/sign-in/session-of.ts";
import { touch } from "#server/sign-in/touch.ts";
import { DomainError } from "#shared/errors/refusal.ts";

function sessionOfCookie(request: Request): Session {
  const token = tokenIn(request.headers);
  const session = token === null ? null : sessionOf(database(), token, machineNow());
  if (session === null) throw new DomainError({ code: "session-ended" });
  return session;
}

/** How long the session lasts. Asking does not count as use. */
export const GET = refusing((request) => Response.json(sessionLeft(sessionOfCookie(request), machineNow())));

/** Counts as use. */
export const POST = refusing((request) => {
  refuseFromElsewhere(request);
  const session = touch(database(), sessionOfCookie(request), machineNow());
  return Response.json(sessionLeft(session, machineNow()));
});
