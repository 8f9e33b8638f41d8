import { NextResponse } from "next/server";
import { readBytes } from "#app/api/_web/read-body.ts";
import { refuseFromElsewhere } from "#app/api/_web/refuse-from-elsewhere.ts";
import { refusing } from "#app/api/_web/refusing.ts";
import { createContext } from "#server/api/context.ts";
import { createCaller } from "#server/api/router.ts";
import { database } from "#server/database.ts";
import { encodings } from "#shared/sheet/encoding.ts";
import { SHEET_LIMIT_KIB } from "#shared/sheet/sheet-limit.ts";

/**
 * A sheet of types as the bytes of its file, or a pasted block. Without an act it is shown and nothing is written; with the id of one it is
 * brought onto the shelf. How it is read comes as headers.
 */
export const POST = refusing(async (request) => {
  refuseFromElsewhere(request);
  const bytes = new Uint8Array(await readBytes(request, SHEET_LIMIT_KIB, "file-too-large"));
  const asked = request.headers.get("x-encoding");
  const encoding = encodings.find((known) => known === asked) ?? null;
  const actId = request.headers.get("x-act-id");
  const api = createCaller(createContext(database(), request.headers));
  if (actId === null) return NextResponse.json(await api.shelf.previewed({ bytes, encoding }));
  const changes = request.headers.get("x-changes") === "yes";
  return NextResponse.json(await api.shelf.broughtIn({ bytes, encoding, actId, changes }));
});
