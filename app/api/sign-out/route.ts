import { NextResponse } from "next/server";
import { refuseFromElsewhere } from "#app/api/_web/refuse-from-elsewhere.ts";
import { refusing } from "#app/api/_web/refusing.ts";
import { clearSession, SESSION_COOKIE } from "#app/api/_web/session-cookie.ts";
import { database } from "#server/database.ts";
import { signOut } from "#server/sign-in/sign-out.ts";

/** Ends the session of the form that is sent, and leads to the sign-in page. */
export const POST = refusing((request) => {
  refuseFromElsewhere(request);
  const token = request.cookies.get(SESSION_COOKIE)?.value;
  if (token !== undefined) signOut(database(), token);
  const response = new NextResponse(null, { status: 303, headers: { location: "/sign-in" } });
  clearSession(response);
  return response;
});
