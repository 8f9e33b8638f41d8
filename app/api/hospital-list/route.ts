import { NextResponse } from "next/server";
import { readBytes } from "#app/api/_web/read-body.ts";
import { refuseFromElsewhere } from "#app/api/_web/refuse-from-elsewhere.ts";
import { refusing } from "#app/api/_web/refusing.ts";
import { createContext } from "#server/api/context.ts";
import { createCaller } from "#server/api/router.ts";
import { database } from "#server/database.ts";
import { encodings } from "#shared/sheet/encoding.ts";
import { SHEET_LIMIT_KIB } from "#shared/sheet/sheet-limit.ts";
import { bookingAnswersSchema } from "#shared/visit/hospital-list/columns.ts";

/** Answers that go with a sheet, over and above the most that is read of it. */
const BESIDE_KIB = 1024;

/** The form as its fields, once no more than the limit has come. */
async function formIn(request: Request): Promise<FormData> {
  const body = await readBytes(request, SHEET_LIMIT_KIB + BESIDE_KIB, "file-too-large");
  const headers = { "content-type": request.headers.get("content-type") ?? "" };
  return new Response(new Uint8Array(body), { headers }).formData();
}

function answersIn(form: FormData) {
  const answers = form.get("answers");
  return bookingAnswersSchema.safeParse(typeof answers === "string" ? JSON.parse(answers) : undefined);
}

/**
 * A hospital's list of bookings, its file or a pasted block, with what was answered about it. Without an act it is shown and nothing is
 * written; with the id of one it is brought in.
 */
export const POST = refusing(async (request) => {
  refuseFromElsewhere(request);
  const form = await formIn(request);
  const answers = answersIn(form);
  const sheet = form.get("sheet");
  if (!answers.success || !(sheet instanceof Blob)) return new Response(null, { status: 400 });
  const encoding = encodings.find((known) => known === form.get("encoding")) ?? null;
  const list = { bytes: new Uint8Array(await sheet.arrayBuffer()), encoding, answers: answers.data };
  const actId = form.get("actId");
  const api = createCaller(createContext(database(), request.headers));
  return NextResponse.json(
    typeof actId === "string"
      ? await api.visit.hospitalBrought({ ...list, actId })
      : await api.visit.hospitalPreviewed(list),
  );
});
