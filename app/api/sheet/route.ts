import { NextResponse } from "next/server";
import { readBytes } from "#app/api/_web/read-body.ts";
import { refuseFromElsewhere } from "#app/api/_web/refuse-from-elsewhere.ts";
import { refusing } from "#app/api/_web/refusing.ts";
import { createContext } from "#server/api/context.ts";
import { createCaller } from "#server/api/router.ts";
import { database } from "#server/database.ts";
import { encodings } from "#shared/sheet/encoding.ts";
import { SHEET_LIMIT_KIB } from "#shared/sheet/sheet-limit.ts";

const LONGEST_NAME = 200;

/** What a file is called; rows that were pasted have no file. */
function nameOf(request: Request): string {
  const sent = request.headers.get("x-file-name") ?? "";
  try {
    return decodeURIComponent(sent).trim().slice(0, LONGEST_NAME) || "pasted rows";
  } catch {
    return "a list";
  }
}

/**
 * A clinic's list as the bytes of its file, or a pasted block. Answers where to look at it. The name and the encoding come as headers,
 * for an address is logged.
 */
export const POST = refusing(async (request) => {
  refuseFromElsewhere(request);
  const bytes = await readBytes(request, SHEET_LIMIT_KIB, "file-too-large");
  const asked = request.headers.get("x-encoding");
  const encoding = encodings.find((known) => known === asked) ?? null;
  const api = createCaller(createContext(database(), request.headers));
  const { sheetId } = await api.sheet.keep({
    fileName: nameOf(request),
    bytes: new Uint8Array(bytes),
    encoding,
  });
  return NextResponse.json({ sheetId });
});
