import type { Tx } from "#db/transaction.ts";
import { staffOf } from "#seed-demo/known.ts";
import { wellWords } from "#seed-demo/lives/course.ts";
import type { Draw } from "#seed-demo/seeded.ts";
import { type CallListLine, callList, callNow } from "#server/calls/call-list.ts";
import { saveCall } from "#server/calls/save-call.ts";
import { newId } from "#server/ids.ts";
import { recordEvent } from "#server/record/record-event.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** Published (Academic Emergency Medicine 2013): 68 to 73 % of patients were reached with four attempts; here of each attempt. */
const REACHED_PERCENT = 70;
const UNREACHED = ["voicemail", "no answer"] as const;

const byTelephone: readonly StepKind[] = [
  "call",
  "call back",
  "alternate contact",
  "ask the referrer",
  "ask again",
  "diary",
];

const toOf: Readonly<Partial<Record<StepKind, string>>> = {
  "alternate contact": "the alternate contact",
  "ask the referrer": "the referrer",
};

function callOf(draw: Draw, kind: StepKind): Texts {
  const to = toOf[kind] ?? "the patient";
  if (!draw.percent(REACHED_PERCENT)) return { to, outcome: draw.from(UNREACHED) };
  const outcome = to === "the patient" ? "reached the patient" : "reached a carer";
  return { to, outcome, note: draw.from(wellWords), "ask-fever": "no", "ask-bleeding": "no" };
}

/** What one line asks for by telephone, by letter, or of a physician; what else stands in it is somebody's to decide. */
function answer(tx: Tx, draw: Draw, { patient, steps }: CallListLine): void {
  const submit = { actId: newId(), patientId: patient.id, lastSeen: Number.MAX_SAFE_INTEGER };
  const caller = { db: tx, staff: staffOf(tx, "caller") };
  const step = steps.find(({ kind }) => byTelephone.includes(kind));
  const asks = (kind: StepKind): boolean => steps.some((one) => one.kind === kind);
  if (step !== undefined) saveCall(caller, { ...submit, texts: callOf(draw, step.kind) });
  else if (asks("letter")) recordEvent(caller, "letter sent", { ...submit, texts: { to: "the patient" } });
  else if (asks("not reached"))
    recordEvent({ db: tx, staff: staffOf(tx, "physician") }, "not reached decided", {
      ...submit,
      texts: { again: "+14", decidedBy: "Dr. Petra Physick", reason: "Asked at the ward." },
    });
}

/** The caller works the list of a day, of patients who are followed in the ordinary way. */
export function workTheList(tx: Tx, draw: Draw, ordinary: ReadonlySet<string>): void {
  const { today } = callNow(tx);
  const { lines } = callList(tx, { which: "due", page: 1 });
  for (const line of lines)
    if (ordinary.has(line.patient.id))
      answer(tx, draw, { ...line, steps: line.steps.filter(({ dueOn }) => dueOn <= today) });
}
