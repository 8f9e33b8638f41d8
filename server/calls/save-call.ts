import { inAct } from "#server/act.ts";
import { callContext } from "#server/calls/call-context.ts";
import { releaseHold } from "#server/calls/hold-patient.ts";
import { newId } from "#server/ids.ts";
import { loadRecord } from "#server/record/load-record.ts";
import type { Doing } from "#server/record/record-event.ts";
import { type Telling, tellOfPatient } from "#server/record/tell-of-patient.ts";
import type { AboutPatient } from "#shared/record/act.ts";
import { callingForm } from "#shared/record/call/calling-form.ts";
import { entriesOfCall } from "#shared/record/call/entries-of-call.ts";
import { entryOf } from "#shared/record/form.ts";
import { fold } from "#shared/tube/fold.ts";

/** What a saved call answers: which red flags it opened, and whether somebody has them. */
export type CallRecorded = {
  readonly actId: string;
  readonly patientId: string;
  readonly flags: readonly { readonly id: string; readonly handed: boolean }[];
};

/**
 * Records one call with all that follows from it in one act: the try, what was answered, each red flag that an answer opened and whom it was
 * handed to. Throws DomainError with every field that is to be mended; nothing is written then.
 */
export function saveCall(doing: Doing, input: AboutPatient): CallRecorded {
  const { db, staff } = doing;
  const { actId, patientId, lastSeen, texts } = input;
  const saved = inAct({ db, staff, actId, command: "call: save", input }, (tx, at) => {
    const loaded = loadRecord(tx, patientId);
    const context = callContext(tx, { record: loaded, state: fold(loaded.events), at });
    const typed = entryOf(callingForm.read(texts, context));
    const entries = entriesOfCall(typed, newId);
    const says = entries.map(({ when, time, ...entry }) => ({ ...entry, at: { when, time } }) as Telling);
    tellOfPatient(tx, says, { actId, patientId, lastSeen, staff, at, loaded });
    const raised = entries.filter(({ kind }) => kind === "red flag raised");
    return { actId, patientId, flags: raised.map(({ id }) => ({ id, handed: typed.handed?.to != null })) };
  });
  releaseHold(doing, { patientId });
  return saved;
}
