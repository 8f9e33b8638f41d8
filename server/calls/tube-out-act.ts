import { inAct } from "#server/act.ts";
import { raisingOf } from "#server/calls/flag-commands.ts";
import { outContext } from "#server/calls/out-context.ts";
import { newId } from "#server/ids.ts";
import { loadRecord } from "#server/record/load-record.ts";
import type { Doing } from "#server/record/record-event.ts";
import { type Telling, tellOfPatient } from "#server/record/tell-of-patient.ts";
import type { OpenFlag } from "#shared/call/red-flag.ts";
import type { AboutPatient } from "#shared/record/act.ts";
import { type OutTyped, tubeOutForm } from "#shared/record/call/tube-out-form.ts";
import { entryOf } from "#shared/record/form.ts";
import { fold } from "#shared/tube/fold.ts";

/** What the record of a tube that is out answers: which tube is booked for next, and which red flag has whom. */
export type OutRecorded = {
  readonly actId: string;
  readonly patientId: string;
  readonly tubeId: string;
  readonly flagId: string;
  readonly handed: boolean;
};

/** The same red flag of the same tube, told in a call just before: it is not raised a second time. */
const openAlready = (flags: readonly OpenFlag[], { flag }: OutTyped): OpenFlag | undefined =>
  flags.find(({ row, tubeId }) => row !== null && row === flag.row && tubeId === flag.of?.tube);

function flagTold(typed: OutTyped, open: OpenFlag | undefined, flagId: string): readonly Telling[] {
  if (open === undefined) return raisingOf(typed.flag, flagId);
  const { handed } = typed.flag;
  if (handed === null) return [];
  const { to, ...at } = handed;
  return [{ kind: "red flag handed", at, payload: { flag: open.id, to, note: null } }];
}

function tellings(typed: OutTyped, flag: readonly Telling[]): readonly Telling[] {
  const ofTube = typed.ofTube.map(({ when, time, ...said }) => ({
    ...said,
    at: { when, time },
    tubes: [typed.tubeId],
  }));
  if (typed.found === null) return [...ofTube, ...flag];
  const { when, time, ...said } = typed.found;
  return [...ofTube, { ...said, at: { when, time } }, ...flag];
}

/**
 * Records in one act that a tube is out or partly out, what was found of the patient, and its red flag with whoever has it; a visit that is
 * booked for the tube turns urgent by it. Throws what is to mend; nothing is written then.
 */
export function recordTubeOut({ db, staff }: Doing, input: AboutPatient): OutRecorded {
  const { actId, patientId, texts } = input;
  return inAct({ db, staff, actId, command: "tube out", input }, (tx, at) => {
    const record = loadRecord(tx, patientId);
    const state = fold(record.events);
    const typed = entryOf(tubeOutForm.read(texts, outContext(tx, at, { record, state })));
    const open = openAlready(state.redFlags, typed);
    const flagId = open?.id ?? newId();
    tellOfPatient(tx, tellings(typed, flagTold(typed, open, flagId)), { ...input, staff, at });
    const handed = typed.flag.handed !== null || (open?.handed ?? null) !== null;
    return { actId, patientId, tubeId: typed.tubeId, flagId, handed };
  });
}
