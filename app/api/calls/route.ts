import { refuseFromElsewhere } from "#app/api/_web/refuse-from-elsewhere.ts";
import { refusing } from "#app/api/_web/refusing.ts";
import { createContext } from "#server/api/context.ts";
import { createCaller } from "#server/api/router.ts";
import { database } from "#server/database.ts";

/** The call list of today as a file. Its name says of which day, and names nobody. */
export const GET = refusing(async (request) => {
  refuseFromElsewhere(request);
  // The API permits it to whoever asks, and writes down that they took it.
  const { name, text } = await createCaller(createContext(database(), request.headers)).calls.file();
  return new Response(text, {
    headers: {
      "content-type": "text/csv; charset=utf-8; header=present",
      "content-disposition": `attachment; filename="${name}"`,
    },
  });
});

export const dynamic = "force-dynamic";
