import type { Database } from "#db/sqlite.ts";
import { type Known, named, type OfPatient, staffOf } from "#seed-demo/known.ts";
import type {
  Act,
  Calling,
  Correcting,
  Flagging,
  Joining,
  Recording,
  Story,
  Visiting,
} from "#seed-demo/story.ts";
import { tellVisiting } from "#seed-demo/tell-visit.ts";
import { callContext } from "#server/calls/call-context.ts";
import { closeFlag, raiseFlag } from "#server/calls/flag-act.ts";
import { raisingContext } from "#server/calls/flag-context.ts";
import { saveCall } from "#server/calls/save-call.ts";
import { newId } from "#server/ids.ts";
import { recordReading } from "#server/output/record-reading.ts";
import { registerPatient } from "#server/patients/register-patient.ts";
import { formContext } from "#server/record/form-context.ts";
import { joinRecords } from "#server/record/join-records.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { openAmendment } from "#server/record/open-amendment.ts";
import { recordAmendment } from "#server/record/record-amendment.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { voidEntry } from "#server/record/void-entry.ts";
import type { Instant } from "#shared/day/instant.ts";
import { amendForm } from "#shared/record/amend/amend-form.ts";
import { voidForm } from "#shared/record/amend/void-form.ts";
import { callingForm } from "#shared/record/call/calling-form.ts";
import { raiseFlagForm } from "#shared/record/call/raise-flag-form.ts";
import { eventForms } from "#shared/record/event-forms.ts";
import type { FieldSpecs, Texts } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";
import { readingForm } from "#shared/record/output/reading-form.ts";
import { patientForm } from "#shared/record/patient/patient-form.ts";
import { fold } from "#shared/tube/fold.ts";

type Told = { readonly story: Story; readonly act: Act; readonly instant: Instant };

/** A form as it opens, with what the story types into it. */
function typedInto(fields: FieldSpecs<unknown>, typed: Texts): Texts {
  const opening = Object.entries<{ readonly initial?: string }>(fields).map(([name, { initial }]) => [
    name,
    initial ?? "",
  ]);
  return { ...Object.fromEntries(opening), ...onlyOf(fields, typed) };
}

function onlyOf(fields: FieldSpecs<unknown>, typed: Texts): Texts {
  const unknown = Object.keys(typed).filter((name) => !Object.hasOwn(fields, name));
  if (unknown.length > 0) throw new Error(`the form has no field ${unknown.join(", ")}`);
  return typed;
}

const fieldsOf = (form: Recording["form"], context: FormContext): FieldSpecs<unknown> =>
  form === "reading" ? readingForm.fields(context) : eventForms[form].fields(context);

/** Registers the patient when the first act of the story is told. */
function register(db: Database, { patient }: Story, at: Instant): string {
  const context = formContext(db, at, { patientId: null, tubeId: null });
  const texts = typedInto(patientForm.fields(context), patient);
  return registerPatient({ db, staff: staffOf(db, "nurse") }, { actId: newId(), texts }).patientId;
}

/** A form that opens a record, or concerns no one tube, has none yet. */
const isOfTube = ({ form, tube }: Recording): boolean =>
  form !== "placed" && form !== "taken over" && tube !== undefined;

function tellCall(db: Database, { patientId, act, instant }: OfPatient<Calling>): void {
  const record = loadRecord(db, patientId);
  const context = callContext(db, { record, state: fold(record.events), at: instant });
  const texts = typedInto(callingForm.fields(context), act.texts);
  saveCall(
    { db, staff: staffOf(db, act.by) },
    { actId: newId(), lastSeen: Number.MAX_SAFE_INTEGER, patientId, texts },
  );
}

function tellRecording(db: Database, known: Known, { patientId, act, instant }: OfPatient<Recording>): void {
  const tubeId = isOfTube(act) ? named(known.tubes, patientId, act.tube) : null;
  const context = formContext(db, instant, { patientId, tubeId });
  const texts = typedInto(fieldsOf(act.form, context), act.texts);
  const submit = { actId: newId(), lastSeen: Number.MAX_SAFE_INTEGER, patientId, texts };
  const doing = { db, staff: staffOf(db, act.by) };
  if (act.form === "reading") {
    recordReading(doing, { ...submit, tubeId: tubeId ?? "" });
    return;
  }
  const done = recordEvent(doing, act.form, { ...submit, ...(tubeId !== null && { tubeId }) });
  const word = act.opens ?? act.tube;
  if (word !== undefined && done.tubeId !== null) known.tubes.set(`${patientId} ${word}`, done.tubeId);
  const [eventId] = done.eventIds;
  if (act.entry !== undefined && eventId !== undefined)
    known.entries.set(`${patientId} ${act.entry}`, { actId: done.actId, eventId });
}

function tellCorrecting(db: Database, known: Known, { patientId, act }: OfPatient<Correcting>): void {
  const { actId: undoes, eventId } = named(known.entries, patientId, act.of);
  const doing = { db, staff: staffOf(db, act.by) };
  const submit = { actId: newId(), lastSeen: Number.MAX_SAFE_INTEGER, patientId, eventId };
  switch (act.form) {
    case "amended": {
      const { texts: stood } = openAmendment(db, { patientId, eventId });
      recordAmendment(doing, {
        ...submit,
        texts: { ...typedInto(amendForm.fields(), {}), ...stood, ...act.texts },
      });
      return;
    }
    case "voided":
      voidEntry(doing, { ...submit, texts: typedInto(voidForm.fields(), act.texts) });
      return;
    case "undone":
      undoAct(doing, { actId: submit.actId, undoes });
  }
}

function tellJoining(db: Database, { patients }: Known, { patientId, act }: OfPatient<Joining>): void {
  const [, otherId] = [...patients].find(([{ patient }]) => patient.number === act.other) ?? [];
  if (otherId === undefined) throw new Error(`nobody has the number ${act.other} yet`);
  joinRecords({ db, staff: staffOf(db, act.by) }, { actId: newId(), patientId, otherId, texts: act.texts });
}

function tellFlagging(db: Database, { patientId, act, instant }: OfPatient<Flagging>): void {
  const state = fold(loadRecord(db, patientId).events);
  const doing = { db, staff: staffOf(db, act.by) };
  const submit = { actId: newId(), lastSeen: Number.MAX_SAFE_INTEGER, patientId };
  if (act.form === "red flag raised") {
    const fields = raiseFlagForm.fields(raisingContext(db, instant, state));
    raiseFlag(doing, { ...submit, texts: typedInto(fields, act.texts) });
    return;
  }
  const flagId = state.redFlags.at(-1)?.id ?? "";
  closeFlag(doing, { ...submit, flagId, texts: act.texts });
}

const isCorrecting = (act: Act): act is Correcting =>
  act.form === "amended" || act.form === "voided" || act.form === "undone";

const isVisiting = (act: Act): act is Visiting => "visit" in act;

/**
 * Tells one act through its use case, as that person of the clinic, at the instant that the clock stands at. Throws, with whose act it was,
 * when the app refuses it: a story that cannot be true is none.
 */
export function tellAct(db: Database, known: Known, { story, act, instant }: Told): void {
  try {
    const patientId = known.patients.get(story) ?? register(db, story, instant);
    known.patients.set(story, patientId);
    if (isCorrecting(act)) tellCorrecting(db, known, { patientId, act, instant });
    else if (isVisiting(act)) tellVisiting(db, known, { patientId, act, instant });
    else if (act.form === "red flag raised" || act.form === "red flag done")
      tellFlagging(db, { patientId, act, instant });
    else if (act.form === "records joined") tellJoining(db, known, { patientId, act, instant });
    else if (act.form === "call") tellCall(db, { patientId, act, instant });
    else tellRecording(db, known, { patientId, act, instant });
  } catch (cause) {
    const whose = `${story.patient.givenName} ${story.patient.familyName}`;
    throw new Error(`the story of ${whose} stops at "${act.form}", ${act.daysAgo} days ago`, { cause });
  }
}
