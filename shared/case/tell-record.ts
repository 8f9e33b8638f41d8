import { clocksOf, reachedAnyTime } from "#shared/call/reach.ts";
import type { CaseEntry, CaseRecord } from "#shared/case/case-schema.ts";
import { lackingField } from "#shared/case/lacking-field.ts";
import { momentOf, type Telling, told } from "#shared/case/telling.ts";
import { whichTube } from "#shared/case/which-tube.ts";
import { clockText } from "#shared/day/instant.ts";
import type { Reading } from "#shared/output/reading.ts";
import { callingForm } from "#shared/record/call/calling-form.ts";
import { entriesOfCall } from "#shared/record/call/entries-of-call.ts";
import { questionsInCall } from "#shared/record/call/questions-in-call.ts";
import { eventForms, type FormKind } from "#shared/record/event-forms.ts";
import type { Entry, FormContext, FormResult } from "#shared/record/form.ts";
import { formBeside } from "#shared/record/form-beside.ts";
import { readReading } from "#shared/record/output/read-reading.ts";
import { readingForm } from "#shared/record/output/reading-form.ts";
import { tubesNamed } from "#shared/record/tubes-named.ts";
import { type Books, openSteps } from "#shared/step/open-steps.ts";
import { decide } from "#shared/tube/decide.ts";
import type { Pins, TubeEvent } from "#shared/tube/event.ts";
import { ruleOf } from "#shared/tube/event-kinds.ts";
import { fold } from "#shared/tube/fold.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";

/** What the entries of a case come to, in memory: by the same forms, decisions and fold as behind the screens. */
export type ToldRecord = { readonly state: PatientTubes; readonly readings: readonly Reading[] };

type History = { readonly events: readonly TubeEvent[]; readonly readings: readonly Reading[] };
type Told = { readonly history: History; readonly tables: Tables };
/** The tables that the entries are decided under, and their versions. */
type Under = { readonly tables: Tables; readonly pins: Pins };
type Typed = { readonly entry: CaseEntry; readonly place: number; readonly context: FormContext };

/** The tables that a record is told under. */
export type Tables = Omit<Books, "readings">;

/** The readings of a tube among those that were told. */
export const readingsIn =
  ({ readings }: Pick<ToldRecord, "readings">) =>
  (tubeId: string): readonly Reading[] =>
    readings.filter((reading) => reading.tubeId === tubeId);

/** Whoever tells a case has seen everything that it told before. */
const SEEN_ALL = Number.MAX_SAFE_INTEGER;

/** One unnamed tube needs no word in a case. */
const UNNAMED = "tube";

const opensRecord = ({ form }: CaseEntry): boolean => form === "placed" || form === "taken over";

const speaksOfTube = ({ form }: CaseEntry): boolean =>
  form === "reading" || (form !== "call" && ruleOf(form).tubes > 0);

function tubeOf(entry: CaseEntry, tubes: readonly TubeState[]): Telling<TubeState | null> {
  if (opensRecord(entry) || !speaksOfTube(entry)) return told(null);
  return whichTube(tubes, entry.tube);
}

const wordOpened = (entry: CaseEntry): string | undefined => (opensRecord(entry) ? entry.tube : entry.opens);

/** What the form of this entry is read beside, on its day and time. */
function contextOf(record: CaseRecord, entry: CaseEntry, { history, tables }: Told): Telling<FormContext> {
  const state = fold(history.events);
  const { tubes } = state;
  const tube = tubeOf(entry, tubes);
  if (tube.kind !== "told") return tube;
  const at = momentOf(record, entry);
  if (at.kind !== "told") return at;
  const newTubeId = wordOpened(entry) ?? (tubes.length === 0 ? UNNAMED : `${UNNAMED} ${tubes.length + 1}`);
  const { zone } = record;
  const steps =
    entry.form === "alarm closed" || entry.form === "usual level accepted"
      ? openSteps(state, { ...tables, readings: readingsIn(history) })
      : [];
  const alarm = steps.find(({ kind, tubeId }) => kind === "alarm" && tubeId === tube.value?.id)?.why ?? [];
  const beside = { at: at.value, zone, tubes, tube: tube.value, newTubeId, staff: [], shelf: [], alarm };
  return told(formBeside(beside));
}

function tellReading(history: History, { entry, place, context }: Typed): Telling<History> {
  const read = readReading(entry.typed, context);
  if (!read.ok) return { kind: "refused", entry: place, refusals: read.refusals };
  const reading = { id: `reading-${place}`, tubeId: context.tube?.id ?? "", ...read.entry };
  return told({ ...history, readings: [...history.readings, reading] });
}

function tellEvent(
  history: History,
  { entry, place, context }: Typed,
  { form, pins }: { readonly form: FormKind; readonly pins: Pins },
): Telling<History> {
  const read: FormResult<Entry> = eventForms[form].read(entry.typed, context);
  if (!read.ok) return { kind: "refused", entry: place, refusals: read.refusals };
  const command = {
    ...read.entry,
    eventId: `entry-${place}`,
    tubes: tubesNamed(read.entry, context),
    daySequence: 0,
    amends: null,
    lastSeen: SEEN_ALL,
  };
  const now = { today: context.today, time: clockText(context.now, context.zone), pins };
  const decision = decide(history.events, command, now);
  if (!decision.ok) return { kind: "refused", entry: place, refusals: decision.refusals };
  return told({ ...history, events: [...history.events, ...decision.events] });
}

/** A call about the patient, by the questions of the case's one table. */
function tellCall(history: History, { entry, place, context }: Typed, under: Under): Telling<History> {
  const { today, now, zone } = context;
  const protocol = under.tables.protocol(under.pins.protocol);
  const questions = questionsInCall({ protocol, patient: fold(history.events), drained: () => null });
  const rung = { to: "the patient", number: null, interpreter: null, hours: null } as const;
  const clocks = clocksOf(zone, reachedAnyTime);
  const beside = { today, now, zone, questions, clocks, ...rung };
  const lacking = lackingField(entry.typed, { form: "call", place, fields: callingForm.fields(beside) });
  if (lacking !== null) return lacking;
  const read = callingForm.read(entry.typed, beside);
  if (!read.ok) return { kind: "refused", entry: place, refusals: read.refusals };
  let ids = 0;
  const newId = (): string => {
    ids += 1;
    return `entry-${place}-${ids}`;
  };
  let { events } = history;
  for (const { id, ...one } of entriesOfCall(read.entry, newId)) {
    const command = { ...one, eventId: id, tubes: [], daySequence: 0, amends: null, lastSeen: SEEN_ALL };
    const decision = decide(events, command, { today, time: clockText(now, zone), pins: under.pins });
    if (!decision.ok) return { kind: "refused", entry: place, refusals: decision.refusals };
    events = [...events, ...decision.events];
  }
  return told({ ...history, events });
}

function tellEntry(history: History, typed: Typed, under: Under): Telling<History> {
  const { form } = typed.entry;
  if (form === "call") return tellCall(history, typed, under);
  const { pins } = under;
  const { fields } = form === "reading" ? readingForm : eventForms[form];
  const into = { form, place: typed.place, fields: fields(typed.context) };
  const lacking = lackingField(typed.entry.typed, into);
  if (lacking !== null) return lacking;
  return form === "reading" ? tellReading(history, typed) : tellEvent(history, typed, { form, pins });
}

/** The patient's conditions are typed first. */
const entriesOf = ({ conditions, entries }: CaseRecord): readonly { entry: CaseEntry; place: number }[] => [
  ...(conditions === undefined
    ? []
    : [{ entry: { form: "conditions noted", typed: conditions } as const, place: 0 }]),
  ...entries.map((entry, index) => ({ entry, place: index + 1 })),
];

/** Types every entry of a case, in the order in which they stand, each on its day. */
export function tellRecord(record: CaseRecord, tables: Tables, pins: Pins): Telling<ToldRecord> {
  let history: History = { events: [], readings: [] };
  for (const { entry, place } of entriesOf(record)) {
    const context = contextOf(record, entry, { history, tables });
    if (context.kind !== "told") return context;
    const next = tellEntry(history, { entry, place, context: context.value }, { tables, pins });
    if (next.kind !== "told") return next;
    history = next.value;
  }
  return told({ state: fold(history.events), readings: history.readings });
}
