import { refuseFromElsewhere } from "#app/api/_web/refuse-from-elsewhere.ts";
import { refusing } from "#app/api/_web/refusing.ts";
import { database } from "#server/database.ts";
import { forgetToken, tokenIn } from "#server/sign-in/cookie.ts";
import { signOut } from "#server/sign-in/sign-out.ts";

/** Ends the session of the form that is sent, and leads to the sign-in page. */
export const POST = refusing((request) => {
  refuseFromElsewhere(request);
  const token = tokenIn(request.headers);
  if (token !== null) signOut(database(), token);
  const headers = { location: "/sign-in", "set-cookie": forgetToken() };
  return new Response(null, { status: 303, headers });
});
