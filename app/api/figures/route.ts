import { refuseFromElsewhere } from "#app/api/_web/refuse-from-elsewhere.ts";
import { refusing } from "#app/api/_web/refusing.ts";
import { daysAsked } from "#app/figures/days-asked.ts";
import { createContext } from "#server/api/context.ts";
import { createCaller } from "#server/api/router.ts";
import { database } from "#server/database.ts";

/** The figures of the last days as a file. */
export const GET = refusing(async (request) => {
  refuseFromElsewhere(request);
  const days = daysAsked(request.nextUrl.searchParams.get("days") ?? undefined);
  const api = createCaller(createContext(database(), request.headers));
  const { name, text } = await api.figure.file({ days });
  return new Response(text, {
    headers: {
      "content-type": "text/csv; charset=utf-8; header=present",
      "content-disposition": `attachment; filename="${name}"`,
    },
  });
});

export const dynamic = "force-dynamic";
