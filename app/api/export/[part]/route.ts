import { refuseFromElsewhere } from "#app/api/_web/refuse-from-elsewhere.ts";
import { refusing } from "#app/api/_web/refusing.ts";
import { createContext } from "#server/api/context.ts";
import { createCaller } from "#server/api/router.ts";
import { database } from "#server/database.ts";
import { readEnv } from "#server/env.ts";
import { exportStream } from "#server/export/export-stream.ts";
import { exportPartNames } from "#shared/words/exports.ts";

/** One file of an export. Its name stands in the address and names nobody; a browser saves it and shows nothing. */
export const GET = refusing(async (request) => {
  refuseFromElsewhere(request);
  const asked = request.nextUrl.pathname.split("/").at(-1);
  const part = exportPartNames.find((name) => name === asked);
  if (part === undefined) return new Response(null, { status: 404 });
  // The API permits it to whoever asks, and writes down that it did.
  const file = await createCaller(createContext(database(), request.headers)).export.file({ part });
  const type = file.endsWith(".csv") ? "text/csv; charset=utf-8; header=present" : "application/json";
  return new Response(exportStream(readEnv(process.env).DATABASE_FILE, file), {
    headers: { "content-type": type, "content-disposition": `attachment; filename="${file}"` },
  });
});

export const dynamic = "force-dynamic";
