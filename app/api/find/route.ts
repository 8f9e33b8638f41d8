import { readBody } from "#app/api/_web/read-body.ts";
import { refuseFromElsewhere } from "#app/api/_web/refuse-from-elsewhere.ts";
import { refusing } from "#app/api/_web/refusing.ts";
import { createContext } from "#server/api/context.ts";
import { createCaller } from "#server/api/router.ts";
import { database } from "#server/database.ts";
import { newId } from "#server/ids.ts";
import { finderDraft, LONGEST_TYPED } from "#shared/record/finder.ts";

const LIMIT_KIB = 8;

const leadTo = (location: string): Response => new Response(null, { status: 303, headers: { location } });

/**
 * The finder that stands on every page: `typed`, parts of a name, a number, a birth date or a telephone. Leads to the patient
 * where only one is meant, by the whole of a record number or by all that was typed, else to the page of those who are; until then
 * what was typed is kept as a draft, since it must stand in no address.
 */
export const POST = refusing(async (request) => {
  refuseFromElsewhere(request);
  const form = new URLSearchParams(await readBody(request, LIMIT_KIB));
  const typed = (form.get("typed") ?? "").slice(0, LONGEST_TYPED);
  const context = createContext(database(), request.headers);
  if (context.session === null) return leadTo("/sign-in?next=/find");
  const api = createCaller(context);
  const { patients } = await api.patient.find({ typed });
  const numbered = patients.filter(({ isNumbered }) => isNumbered);
  const [only, other] = numbered.length > 0 ? numbered : patients;
  if (only !== undefined && other === undefined) return leadTo(`/patients/${only.id}`);
  await api.draft.save({ ...finderDraft, content: { actId: newId(), texts: { typed } } });
  return leadTo("/find");
});
