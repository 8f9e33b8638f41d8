import { inAct } from "#server/act.ts";
import { today } from "#server/clock.ts";
import type { Doing } from "#server/record/record-event.ts";
import { minuteAt } from "#server/visits/clinic-slots.ts";
import { viewVisit } from "#server/visits/view-visit.ts";
import { recordOfVisit, type VisitRecorded, type VisitSubmit, visitOf } from "#server/visits/visit-act.ts";
import { printDay } from "#shared/day/print-day.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { entryOf } from "#shared/record/form.ts";
import { cancellingForm, notingForm } from "#shared/record/visit/noting-form.ts";
import { preparingForm } from "#shared/record/visit/preparing-form.ts";
import type { NotedState, Visit } from "#shared/visit/visit.ts";

export type NotingVisit = VisitSubmit & {
  readonly visitId: string;
  readonly state: NotedState;
  readonly texts: Texts;
};

export type PreparingVisit = VisitSubmit & { readonly visitId: string; readonly texts: Texts };

/** What can only be said once the day, or the time, of the visit has come. */
const onlyThen: readonly NotedState[] = ["arrived", "done", "did not attend"];

function refuseTooSoon({ on, place }: Visit, state: NotedState, now: { on: string; at: number }): void {
  if (!onlyThen.includes(state)) return;
  const missedTooSoon = state === "did not attend" && on === now.on && (place.from ?? 0) > now.at;
  if (on <= now.on && !missedTooSoon) return;
  throw new DomainError({ code: "visit-to-come", args: { day: printDay(on) } });
}

/** Notes how a visit stands: confirmed, arrived, done, not attended, cancelled by whom. Throws what is to mend. */
export function noteVisit({ db, staff }: Doing, input: NotingVisit): VisitRecorded {
  const { actId, patientId, visitId, state, texts } = input;
  return inAct({ db, staff, actId, command: "visit: note", input }, (tx, at) => {
    const visit = visitOf(tx, { patientId, visitId });
    refuseTooSoon(visit, state, { on: today(tx), at: minuteAt(tx, at) });
    const form = state === "cancelled" ? cancellingForm : notingForm;
    const payload = { visit: visitId, state, ...entryOf(form.read(texts, undefined)) };
    return recordOfVisit(tx, [{ kind: "visit noted", payload }], { ...input, staff, at });
  });
}

/** Notes how the things stand that are to be settled first, by the rows of today. Throws what is to mend. */
export function prepareVisit({ db, staff }: Doing, input: PreparingVisit): VisitRecorded {
  const { actId, patientId, visitId, texts } = input;
  return inAct({ db, staff, actId, command: "visit: prepare", input }, (tx, at) => {
    const { prerequisites } = viewVisit(tx, { patientId, visitId });
    const things = prerequisites.map(({ thing }) => ({ thing, hint: "" }));
    const [first, ...more] = entryOf(preparingForm.read(texts, { things })).map((answer) => ({
      kind: "visit prepared" as const,
      payload: { visit: visitId, by: null, ...answer },
    }));
    if (first === undefined) throw new DomainError({ code: "nothing-said" });
    return recordOfVisit(tx, [first, ...more], { ...input, staff, at });
  });
}
