import { inAct } from "#server/act.ts";
import { today } from "#server/clock.ts";
import type { Doing } from "#server/record/record-event.ts";
import { minuteAt } from "#server/visits/clinic-slots.ts";
import { recordOfVisit, type VisitRecorded, type VisitSubmit, visitOf } from "#server/visits/visit-act.ts";
import { printDay } from "#shared/day/print-day.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { entryOf } from "#shared/record/form.ts";
import { cancellingForm, notingForm } from "#shared/record/visit/noting-form.ts";
import { preparingForm } from "#shared/record/visit/preparing-form.ts";
import type { Payload } from "#shared/tube/payloads.ts";
import type { PrerequisiteThing } from "#shared/visit/prerequisite-things.ts";
import type { Visit } from "#shared/visit/visit.ts";

export type NotedState = Payload<"visit noted">["state"];

export type NotingVisit = VisitSubmit & {
  readonly visitId: string;
  readonly state: NotedState;
  readonly texts: Texts;
};

export type PreparingVisit = VisitSubmit & {
  readonly visitId: string;
  readonly thing: PrerequisiteThing;
  readonly texts: Texts;
};

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
    return recordOfVisit(tx, { kind: "visit noted", payload }, { ...input, staff, at });
  });
}

/** Notes how one of the things stands that are to be settled first, and who said so. */
export function prepareVisit({ db, staff }: Doing, input: PreparingVisit): VisitRecorded {
  const { actId, patientId, visitId, thing, texts } = input;
  return inAct({ db, staff, actId, command: "visit: prepare", input }, (tx, at) => {
    visitOf(tx, { patientId, visitId });
    const payload = { visit: visitId, thing, ...entryOf(preparingForm.read(texts, undefined)) };
    return recordOfVisit(tx, { kind: "visit prepared", payload }, { ...input, staff, at });
  });
}
