import { refuseFromElsewhere } from "#app/api/_web/refuse-from-elsewhere.ts";
import { refusing } from "#app/api/_web/refusing.ts";
import { createContext } from "#server/api/context.ts";
import { createCaller } from "#server/api/router.ts";
import { database } from "#server/database.ts";

/** The rows of a list that are set aside, each with what to mend, as a file. */
export const GET = refusing(async (request) => {
  refuseFromElsewhere(request);
  const sheetId = request.nextUrl.pathname.split("/").at(-1) ?? "";
  const file = await createCaller(createContext(database(), request.headers)).sheet.setAside({ sheetId });
  return new Response(file, {
    headers: {
      "content-type": "text/csv; charset=utf-8; header=present",
      "content-disposition": 'attachment; filename="rows-set-aside.csv"',
    },
  });
});
