import { printDay } from "#shared/day/print-day.ts";
import type { alarmPayloads } from "#shared/tube/alarm-payloads.ts";
import { sentence, type Tell } from "#shared/words/sentence.ts";

/** What was said of an alarm, as the story tells it. */
export const alarmSentences: { readonly [K in keyof typeof alarmPayloads]: Tell<K> } = {
  "alarm closed": ({ answers, done, by, note }) =>
    sentence(
      "Alarm closed",
      [done, `by ${by}`, answers.length > 1 && `${answers.length} reasons answered`],
      note,
    ),
  "usual level accepted": ({ row, mlPer24h, until, acceptedBy, note }) =>
    sentence(
      "Usual level accepted",
      [`${row} output`, `${mlPer24h} mL/24 h`, `until ${printDay(until)}`, `by ${acceptedBy}`],
      note,
    ),
};
