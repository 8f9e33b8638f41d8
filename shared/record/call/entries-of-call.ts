import type { AnsweredInCall, CallTyped } from "#shared/record/call/calling-context.ts";
import { opens } from "#shared/record/call/calling-form.ts";
import type { EntryOf } from "#shared/record/form.ts";

/** What a call is entered as: the try, and of each red flag that an answer opened that it was raised, and handed to whom. */
export type EntryOfCall = { readonly id: string } & (
  | EntryOf<"call attempted">
  | EntryOf<"red flag raised">
  | EntryOf<"red flag handed">
);

const ofTube = ({ question: { tube } }: AnsweredInCall) =>
  tube === null ? null : { tube: tube.id, number: tube.number };

/** The entries of one call, the try first; each has an id of its own by `newId`, by which the others name it. */
export function entriesOfCall(
  typed: CallTyped,
  newId: () => string,
): readonly [EntryOfCall, ...EntryOfCall[]] {
  const { when, time, answers, handed, ...call } = typed;
  const said = answers.map((one) => ({
    question: one.question.id,
    asks: one.question.asks,
    of: ofTube(one),
    says: one.says,
  }));
  const flags = answers.flatMap((answer): EntryOfCall[] => {
    const { flag } = answer.question;
    if (flag === null || !opens(answer.question, answer.says)) return [];
    const id = newId();
    const { level, says, untilReached } = flag;
    const told = { row: flag.id, level, says, untilReached, of: ofTube(answer), toldBy: call.to, note: null };
    const raised: EntryOfCall = { kind: "red flag raised", id, when, time, payload: told };
    if (handed === null || handed.to === null) return [raised];
    const payload = { flag: id, to: handed.to, note: null };
    return [raised, { kind: "red flag handed", id: newId(), when, time, payload }];
  });
  return [{ kind: "call attempted", id: newId(), when, time, payload: { ...call, answers: said } }, ...flags];
}
