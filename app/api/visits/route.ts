import { refuseFromElsewhere } from "#app/api/_web/refuse-from-elsewhere.ts";
import { refusing } from "#app/api/_web/refusing.ts";
import { createContext } from "#server/api/context.ts";
import { createCaller } from "#server/api/router.ts";
import { database } from "#server/database.ts";

/** Visits from today on as a calendar file, without whose they are; where there is none, a sentence that says so. */
export const GET = refusing(async (request) => {
  refuseFromElsewhere(request);
  const file = await createCaller(createContext(database(), request.headers)).visit.calendarFile();
  return new Response(file, {
    headers: {
      "content-type": "text/calendar; charset=utf-8; method=PUBLISH",
      "content-disposition": 'attachment; filename="visits.ics"',
      "cache-control": "private, no-store",
    },
  });
});

export const dynamic = "force-dynamic";
