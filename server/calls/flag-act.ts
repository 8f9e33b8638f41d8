import { inAct } from "#server/act.ts";
import { raisingOf } from "#server/calls/flag-commands.ts";
import { flagContext, raisingContext } from "#server/calls/flag-context.ts";
import { newId } from "#server/ids.ts";
import { loadRecord } from "#server/record/load-record.ts";
import type { Doing } from "#server/record/record-event.ts";
import { tellOfPatient } from "#server/record/tell-of-patient.ts";
import type { AboutPatient } from "#shared/record/act.ts";
import type { AboutFlag } from "#shared/record/call/asked-schema.ts";
import { flagDoneForm } from "#shared/record/call/flag-done-form.ts";
import { handFlagForm } from "#shared/record/call/hand-flag-form.ts";
import { raiseFlagForm } from "#shared/record/call/raise-flag-form.ts";
import { entryOf } from "#shared/record/form.ts";
import { fold } from "#shared/tube/fold.ts";

/** What an act about a red flag answers: which, and what to undo. */
export type FlagRecorded = { readonly actId: string; readonly patientId: string; readonly flagId: string };

/** Raises a red flag by a row of the newest table or in own words, and hands it over where somebody has it. Throws what is to mend. */
export function raiseFlag({ db, staff }: Doing, input: AboutPatient): FlagRecorded {
  const { actId, patientId, texts } = input;
  return inAct({ db, staff, actId, command: "flag: raise", input }, (tx, at) => {
    const state = fold(loadRecord(tx, patientId).events);
    const typed = entryOf(raiseFlagForm.read(texts, raisingContext(tx, at, state)));
    const flagId = newId();
    tellOfPatient(tx, raisingOf(typed, flagId), { ...input, staff, at });
    return { actId, patientId, flagId };
  });
}

/** Hands an open red flag to a named person, also where another one has it. Throws what is to mend. */
export function handFlag({ db, staff }: Doing, input: AboutFlag): FlagRecorded {
  const { actId, patientId, flagId, texts } = input;
  return inAct({ db, staff, actId, command: "flag: hand", input }, (tx, at) => {
    const { at: on, ...told } = entryOf(handFlagForm.read(texts, flagContext(tx, at, input)));
    const payload = { flag: flagId, ...told };
    tellOfPatient(tx, [{ kind: "red flag handed", at: on, payload }], { ...input, staff, at });
    return { actId, patientId, flagId };
  });
}

/** Closes an open red flag with what was done, and by whom. Throws what is to mend. */
export function closeFlag({ db, staff }: Doing, input: AboutFlag): FlagRecorded {
  const { actId, patientId, flagId, texts } = input;
  return inAct({ db, staff, actId, command: "flag: done", input }, (tx, at) => {
    const { when, ...told } = entryOf(flagDoneForm.read(texts, flagContext(tx, at, input)));
    const payload = { flag: flagId, ...told };
    tellOfPatient(tx, [{ kind: "red flag done", at: when, payload }], { ...input, staff, at });
    return { actId, patientId, flagId };
  });
}
