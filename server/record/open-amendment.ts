import { actById } from "#db/queries/acts.ts";
import { typedInList } from "#db/queries/sheets.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { entryContext } from "#server/record/entry-context.ts";
import { loadRecord, storedBehind } from "#server/record/load-record.ts";
import type { RecordedAct } from "#server/record/record-event.ts";
import { meantOtherwise } from "#server/shelf/named-on-shelf.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { retype } from "#shared/record/amend/retype.ts";
import { typedOut } from "#shared/record/amend/typed-out.ts";
import { eventForms, type FormKind } from "#shared/record/event-forms.ts";
import type { FieldSpecs, Texts } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";

/** The fields of a form of any kind: read and said again by themselves, so what they hold need not be known. */
const fieldsOf = (kind: FormKind, context: FormContext) =>
  eventForms[kind].fields(context) as unknown as FieldSpecs<Record<string, unknown>>;

export type OpenAmendment = {
  readonly kind: FormKind;
  readonly tubeId: string | null;
  /** What the entry says now, as it must be typed today to mean the same. */
  readonly texts: Texts;
};

/** What the form that corrects an entry opens with: the newest texts of that entry, so that nothing is lost by correcting one field. */
export function openAmendment(db: Database, asked: { patientId: string; eventId: string }): OpenAmendment {
  const { kind, event, context } = entryContext(db, now(db), asked);
  const rows = storedBehind(db, loadRecord(db, asked.patientId)).map(({ row }) => row);
  const last =
    rows.findLast(({ amends, kind: of }) => amends === event.id && of === "amended") ??
    rows.find(({ id }) => id === event.id);
  const act = last === undefined ? undefined : actById(db, last.actId);
  if (last === undefined || act === undefined) throw new DomainError({ code: "entry-unknown" });
  const tubeId = event.tubes.at(-1) ?? null;
  // What a list brought in was typed by its rows; one act holds many.
  const inList =
    tubeId === null ? undefined : (typedInList(db, { actId: act.id, tubeId }) as Texts | undefined);
  const said = (JSON.parse(act.result) as Partial<RecordedAct>).typed ?? inList ?? {};
  const type = meantOtherwise(db, said.shelf ?? "", last.recordedAt);
  const typed = type === null ? said : typedOut(said, type);
  const then = { texts: typed, fields: fieldsOf(kind, entryContext(db, last.recordedAt, asked).context) };
  return { kind, tubeId, texts: retype(then, fieldsOf(kind, context)) };
}
