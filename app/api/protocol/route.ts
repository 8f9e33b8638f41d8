import { NextResponse } from "next/server";
import { readBytes } from "#app/api/_web/read-body.ts";
import { refuseFromElsewhere } from "#app/api/_web/refuse-from-elsewhere.ts";
import { refusing } from "#app/api/_web/refusing.ts";
import { createContext } from "#server/api/context.ts";
import { createCaller } from "#server/api/router.ts";
import { database } from "#server/database.ts";
import { SHEET_LIMIT_KIB } from "#shared/sheet/sheet-limit.ts";

/** The draft of the table as a file, or what stands where nothing is drafted. A browser saves it and shows nothing. */
export const GET = refusing(async (request) => {
  refuseFromElsewhere(request);
  const text = await createCaller(createContext(database(), request.headers)).protocol.file();
  return new Response(text, {
    headers: {
      "content-type": "text/csv; charset=utf-8; header=present",
      "content-disposition": 'attachment; filename="protocol.csv"',
    },
  });
});

/** A file of the table into the draft that was seen, all of it or nothing. What is to mend comes back line by line. */
export const POST = refusing(async (request) => {
  refuseFromElsewhere(request);
  const bytes = new Uint8Array(await readBytes(request, SHEET_LIMIT_KIB, "file-too-large"));
  const actId = request.headers.get("x-act-id") ?? "";
  const revision = Number(request.headers.get("x-revision") ?? "");
  const api = createCaller(createContext(database(), request.headers));
  return NextResponse.json(await api.protocol.bringFile({ actId, revision, bytes }));
});

export const dynamic = "force-dynamic";
