import type { Database } from "#db/sqlite.ts";
import { inAct } from "#server/act.ts";
import { callContext } from "#server/calls/call-context.ts";
import { newId } from "#server/ids.ts";
import { loadRecord } from "#server/record/load-record.ts";
import type { Doing } from "#server/record/record-event.ts";
import { type Telling, tellOfPatient } from "#server/record/tell-of-patient.ts";
import type { Instant } from "#shared/day/instant.ts";
import type { AboutPatient } from "#shared/record/act.ts";
import type { AnsweredInCall, CallTyped } from "#shared/record/call/calling-context.ts";
import { callingForm, opens } from "#shared/record/call/calling-form.ts";
import { entryOf } from "#shared/record/form.ts";
import { fold } from "#shared/tube/fold.ts";

/** What a saved call answers: which red flags it opened, and what an answer asks to record next. */
export type CallRecorded = {
  readonly actId: string;
  readonly patientId: string;
  readonly flags: readonly { readonly id: string; readonly handed: boolean }[];
};

const ofTube = ({ question: { tube } }: AnsweredInCall) =>
  tube === null ? null : { tube: tube.id, number: tube.number };

function attempt(typed: CallTyped): Telling {
  const { to, number, outcome, back, interpreter, answers, note, when, time } = typed;
  return {
    kind: "call attempted",
    at: { when, time },
    payload: {
      to,
      number,
      outcome,
      back,
      interpreter,
      answers: answers.map((one) => ({
        question: one.question.id,
        asks: one.question.asks,
        of: ofTube(one),
        says: one.says,
      })),
      note,
    },
  };
}

/** Each red flag that an answer opened: raised, and handed to whoever has it. */
function flagsOf(typed: CallTyped): readonly (Telling & { readonly id: string })[] {
  const { answers, handed, to, when, time } = typed;
  return answers.flatMap((answer) => {
    const { flag } = answer.question;
    if (flag === null || !opens(answer.question, answer.says)) return [];
    const id = newId();
    const { level, says, untilReached } = flag;
    const told = { row: flag.id, level, says, untilReached, of: ofTube(answer), toldBy: to, note: null };
    const raised = { kind: "red flag raised" as const, id, at: { when, time }, payload: told };
    if (handed === null || handed.to === null) return [raised];
    const payload = { flag: id, to: handed.to, note: null };
    return [raised, { kind: "red flag handed" as const, id: newId(), at: { when, time }, payload }];
  });
}

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
export function saveCall({ db, staff }: Doing, input: AboutPatient): CallRecorded {
  const { actId, patientId, lastSeen } = input;
  return inAct({ db, staff, actId, command: "call: save", input }, (tx, at) => {
    const typed = read(tx, at, input);
    const flags = flagsOf(typed);
    tellOfPatient(tx, [attempt(typed), ...flags], { actId, patientId, lastSeen, staff, at });
    const raised = flags.filter(({ kind }) => kind === "red flag raised");
    return { actId, patientId, flags: raised.map(({ id }) => ({ id, handed: typed.handed?.to != null })) };
  });
}
