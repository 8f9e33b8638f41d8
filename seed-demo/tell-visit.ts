import type { Database } from "#db/sqlite.ts";
import { type Known, named, type OfPatient, staffOf } from "#seed-demo/known.ts";
import type { Visiting } from "#seed-demo/story.ts";
import { newId } from "#server/ids.ts";
import { bookVisit, moveVisit } from "#server/visits/book-visit.ts";
import { clinicSlots } from "#server/visits/clinic-slots.ts";
import { noteVisit, prepareVisit } from "#server/visits/note-visit.ts";
import { slotQuestion } from "#server/visits/offer-slots.ts";
import { visitOf } from "#server/visits/visit-act.ts";
import { type VisitFor, visitAsked } from "#server/visits/visit-asked.ts";
import { addDays } from "#shared/day/day.ts";
import type { Instant } from "#shared/day/instant.ts";
import { printDay } from "#shared/day/print-day.ts";
import { readNotOn } from "#shared/record/field/not-on-field.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { bestSlots } from "#shared/visit/offers.ts";
import { type NotOn, openTubes } from "#shared/visit/visit.ts";
import { printMinute } from "#shared/words/offers.ts";

/** Minutes where no row says how many. */
const PLAINLY = 30;

/** The first slot that is free from so many days on, as it would be typed. */
export function firstSlot(
  db: Database,
  at: Instant,
  { inDays, notOn, ...of }: VisitFor & { readonly inDays: number; readonly notOn: NotOn },
): Texts {
  const clinic = clinicSlots(db, at, of.moves?.id ?? null);
  const asked = visitAsked(db, at, of);
  const minutes = asked.needs.minutes ?? PLAINLY;
  const from = addDays(clinic.now.on, inDays);
  const question = slotQuestion({ clinic, asked, minutes, notOn, urgent: false });
  const window = { ...question.window, earliest: from, target: from, latest: null };
  const [best] = bestSlots({ ...question, window }, 1);
  if (best === undefined) throw new Error("the clinic has no free slot");
  const { slot } = best;
  const room = clinic.rooms.find(({ id }) => id === slot.roomId)?.name ?? "";
  return { on: printDay(slot.on), at: printMinute(slot.from), room, minutes: String(minutes) };
}

type Telling = OfPatient<Visiting>;
type Of<F extends Visiting["form"]> = OfPatient<Extract<Visiting, { readonly form: F }>>;

const submitOf = (patientId: string) => ({
  actId: newId(),
  patientId,
  lastSeen: Number.MAX_SAFE_INTEGER,
});

function tellBooking(db: Database, known: Known, { patientId, act, instant }: Of<"visit booked">): void {
  const days = readNotOn(act.texts.notOn ?? "");
  const notOn = days.ok ? days.value : [];
  const tubes = act.tubes.map(([tube, does]) => ({ tubeId: named(known.tubes, patientId, tube), act: does }));
  const { inDays } = act;
  const slot =
    inDays === undefined ? {} : firstSlot(db, instant, { patientId, tubes, moves: null, inDays, notOn });
  const texts = { ...slot, ...act.texts };
  const doing = { db, staff: staffOf(db, act.by) };
  const { visitId } = bookVisit(doing, { ...submitOf(patientId), tubes, urgent: false, texts });
  known.visits.set(`${patientId} ${act.visit}`, visitId);
}

/** Tells one act about a visit through its use case. */
export function tellVisiting(db: Database, known: Known, { patientId, act, instant }: Telling): void {
  if (act.form === "visit booked") {
    tellBooking(db, known, { patientId, act, instant });
    return;
  }
  const doing = { db, staff: staffOf(db, act.by) };
  const visitId = named(known.visits, patientId, act.visit);
  const submit = { ...submitOf(patientId), visitId };
  if (act.form === "visit noted") noteVisit(doing, { ...submit, state: act.state, texts: act.texts });
  else if (act.form === "visit prepared") prepareVisit(doing, { ...submit, texts: act.texts });
  else {
    const moves = visitOf(db, { patientId, visitId });
    const { notOn } = moves;
    const of = { patientId, tubes: openTubes(moves), moves, inDays: act.inDays, notOn };
    moveVisit(doing, { ...submit, urgent: false, texts: { ...firstSlot(db, instant, of), ...act.texts } });
  }
}
