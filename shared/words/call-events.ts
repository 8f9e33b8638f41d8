import { printDay } from "#shared/day/print-day.ts";
import type { callPayloads } from "#shared/tube/call-payloads.ts";
import { sentence, type Tell } from "#shared/words/sentence.ts";

type Of = { readonly tube: string; readonly number: number } | null;
const ofWhom = (of: Of): string => (of === null ? "" : ` (tube ${of.number})`);

/** Calls, letters and red flags as the story tells them. */
export const callSentences: { readonly [K in keyof typeof callPayloads]: Tell<K> } = {
  "call attempted": ({ to, number, outcome, back, interpreter, answers, note }) => {
    const told = answers.filter(({ says }) => says !== "not asked");
    return sentence(
      `Rang ${to}`,
      [
        outcome,
        number !== null && `on ${number}`,
        back !== null && `ring back on ${printDay(back.on)}${back.at === null ? "" : ` at ${back.at}`}`,
        interpreter !== null && `through ${interpreter}`,
        told.length > 0 && told.map(({ asks, of, says }) => `${asks}${ofWhom(of)} ${says}`).join("; "),
      ],
      note,
    );
  },
  "letter sent": ({ to, note }) => sentence("Letter sent", [`to ${to}`], note),
  "not reached decided": ({ decidedBy, again, reason }) =>
    sentence(
      "Not reached",
      [
        `${decidedBy} decided`,
        again === null ? "nobody is called any more" : `called again from ${printDay(again)}`,
      ],
      reason,
    ),
  "red flag raised": ({ level, says, of, untilReached, toldBy, note }) =>
    sentence(
      `Red flag, ${level}`,
      [
        `${says}${ofWhom(of)}`,
        untilReached !== null && `until reached: ${untilReached}`,
        toldBy !== null && `told by ${toldBy}`,
      ],
      note,
    ),
  "red flag handed": ({ to, note }) => sentence("Red flag handed", [`to ${to}`], note),
  "red flag done": ({ by, what }) => sentence("Red flag", [`what was done, by ${by}`], what),
  "told of the tube": ({ whom, language, by }) =>
    sentence("Told of the tube", [whom, `in ${language}`, `by ${by}`], null),
};
