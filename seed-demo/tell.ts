import { clinicOf, setClockOffset } from "#db/queries/clinic.ts";
import { allStaff } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import type { Act, Story } from "#seed-demo/story.ts";
import { machineNow } from "#server/clock.ts";
import { newId } from "#server/ids.ts";
import { recordReading } from "#server/output/record-reading.ts";
import { registerPatient } from "#server/patients/register-patient.ts";
import { formContext } from "#server/record/form-context.ts";
import { recordEvent } from "#server/record/record-event.ts";
import type { StaffRole } from "#shared/access/roles.ts";
import { addDays, type Day } from "#shared/day/day.ts";
import { type Instant, instantAt } from "#shared/day/instant.ts";
import { eventForms } from "#shared/record/event-forms.ts";
import type { FieldSpecs, Texts } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";
import { readingForm } from "#shared/record/output/reading-form.ts";
import { patientForm } from "#shared/record/patient/patient-form.ts";

/** Whoever tells the stories: the clinic's database, its start day, and who works there. */
type Teller = { readonly db: Database; readonly startDay: Day };

type Told = { readonly story: Story; readonly act: Act };

const order = ({ act }: Told): string => `${String(10_000 - act.daysAgo).padStart(5, "0")} ${act.at}`;

/** Moves the demo's clock, so that each act is recorded on the day on which it happened. */
function setClock({ db }: Teller, to: Instant): void {
  inTransaction(db, (tx) => setClockOffset(tx, to - machineNow()));
}

function instantOf({ db, startDay }: Teller, { daysAgo, at }: Act): Instant {
  const read = instantAt(addDays(startDay, -daysAgo), at, clinicOf(db).zone);
  if (!read.ok) throw new Error(`no such time: ${daysAgo} days ago ${at}`);
  return read.value;
}

function staffOf({ db }: Teller, role: StaffRole) {
  const person = allStaff(db).find((staff) => staff.role === role);
  if (person === undefined) throw new Error(`nobody is ${role}`);
  return person;
}

/** A form as it opens, with what the story types into it. */
function typedInto(fields: FieldSpecs<unknown>, typed: Texts): Texts {
  const opening = Object.entries<{ readonly initial?: string }>(fields).map(([name, { initial }]) => [
    name,
    initial ?? "",
  ]);
  const unknown = Object.keys(typed).filter((name) => !Object.hasOwn(fields, name));
  if (unknown.length > 0) throw new Error(`the form has no field ${unknown.join(", ")}`);
  return { ...Object.fromEntries(opening), ...typed };
}

const fieldsOf = (form: Act["form"], context: FormContext): FieldSpecs<unknown> =>
  form === "reading" ? readingForm.fields(context) : eventForms[form].fields(context);

/** Registers the patient on the day of the first act. */
function register(teller: Teller, { patient, acts }: Story): string {
  const [first] = acts;
  if (first === undefined) throw new Error("a story without acts");
  const at = instantOf(teller, first);
  setClock(teller, at);
  const context = formContext(teller.db, at, { patientId: null, tubeId: null });
  const texts = typedInto(patientForm.fields(context), patient);
  return registerPatient({ db: teller.db, staff: staffOf(teller, "nurse") }, { actId: newId(), texts })
    .patientId;
}

type Known = { readonly patients: Map<Story, string>; readonly tubes: Map<string, string> };

function tellAct(teller: Teller, known: Known, { story, act }: Told): void {
  const at = instantOf(teller, act);
  const patientId = known.patients.get(story) ?? register(teller, story);
  known.patients.set(story, patientId);
  setClock(teller, at);
  const opensRecord = act.form === "placed" || act.form === "taken over" || act.tube === undefined;
  const tubeId = opensRecord ? null : (known.tubes.get(`${patientId} ${act.tube}`) ?? "");
  const context = formContext(teller.db, at, { patientId, tubeId });
  const submit = { actId: newId(), lastSeen: Number.MAX_SAFE_INTEGER, patientId };
  const texts = typedInto(fieldsOf(act.form, context), act.texts);
  const doing = { db: teller.db, staff: staffOf(teller, act.by) };
  if (act.form === "reading") {
    recordReading(doing, { ...submit, texts, tubeId: tubeId ?? "" });
    return;
  }
  const done = recordEvent(doing, act.form, { ...submit, texts, ...(tubeId !== null && { tubeId }) });
  const word = act.opens ?? act.tube;
  if (word !== undefined && done.tubeId !== null) known.tubes.set(`${patientId} ${word}`, done.tubeId);
}

/** Tells every story through the use cases, act by act in the order of time, and sets the clock right again. */
export function tellStories(teller: Teller, stories: readonly Story[]): void {
  const acts = stories.flatMap((story) => story.acts.map((act) => ({ story, act })));
  const known: Known = { patients: new Map(), tubes: new Map() };
  const inTime = acts.toSorted((a, b) => (order(a) < order(b) ? -1 : order(a) > order(b) ? 1 : 0));
  for (const told of inTime) tellAct(teller, known, told);
  inTransaction(teller.db, (tx) => setClockOffset(tx, 0));
}
