import type { Database } from "#db/sqlite.ts";
import { inAct } from "#server/act.ts";
import { callContext } from "#server/calls/call-context.ts";
import { releaseHold } from "#server/calls/hold-patient.ts";
import { newId } from "#server/ids.ts";
import { loadRecord } from "#server/record/load-record.ts";
import type { Doing } from "#server/record/record-event.ts";
import { type Telling, tellOfPatient } from "#server/record/tell-of-patient.ts";
import type { Instant } from "#shared/day/instant.ts";
import type { AboutPatient } from "#shared/record/act.ts";
import type { CallTyped } from "#shared/record/call/calling-context.ts";
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

/** What was typed of a call, read as the page read it. */
function read(db: Database, at: Instant, { patientId, texts }: AboutPatient): CallTyped {
  const record = loadRecord(db, patientId);
  const context = callContext(db, { record, state: fold(record.events), at });
  return entryOf(callingForm.read(texts, context));
}

/**
 * Records one call with all that follows from it in one act: the try, what was answered, each red flag that an answer opened and whom it was
 * handed to. Throws DomainError with every field that is to be mended; nothing is written then.
 */
export function saveCall(doing: Doing, input: AboutPatient): CallRecorded {
  const { db, staff } = doing;
  const { actId, patientId, lastSeen } = input;
  const saved = inAct({ db, staff, actId, command: "call: save", input }, (tx, at) => {
    const typed = read(tx, at, input);
    const entries = entriesOfCall(typed, newId);
    const says = entries.map(({ when, time, ...entry }) => ({ ...entry, at: { when, time } }) as Telling);
    tellOfPatient(tx, says, { actId, patientId, lastSeen, staff, at });
    const raised = entries.filter(({ kind }) => kind === "red flag raised");
    return { actId, patientId, flags: raised.map(({ id }) => ({ id, handed: typed.handed?.to != null })) };
  });
  releaseHold(doing, { patientId });
  return saved;
}
