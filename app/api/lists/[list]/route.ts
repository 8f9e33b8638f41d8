import { refuseFromElsewhere } from "#app/api/_web/refuse-from-elsewhere.ts";
import { refusing } from "#app/api/_web/refusing.ts";
import { filterInQuery } from "#app/lists/filter-address.ts";
import { createContext } from "#server/api/context.ts";
import { createCaller } from "#server/api/router.ts";
import { database } from "#server/database.ts";
import { stepLists } from "#shared/step/work-list.ts";

/** One list as a file, under the filter of the address. Its name says which list and of which day, and names nobody. */
export const GET = refusing(async (request) => {
  refuseFromElsewhere(request);
  const { pathname, searchParams } = request.nextUrl;
  const list = stepLists.find((name) => name === pathname.split("/").at(-1));
  if (list === undefined) return new Response(null, { status: 404 });
  const filter = filterInQuery(Object.fromEntries(searchParams));
  // The API permits it to whoever asks, and writes down that they took it.
  const api = createCaller(createContext(database(), request.headers));
  const { name, text } = await api.list.file({ list, filter });
  return new Response(text, {
    headers: {
      "content-type": "text/csv; charset=utf-8; header=present",
      "content-disposition": `attachment; filename="${name}"`,
    },
  });
});

export const dynamic = "force-dynamic";
