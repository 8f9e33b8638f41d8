import type { Protocol } from "#shared/protocol/protocol.ts";
import { callRowWords, questionRowWords } from "#shared/words/protocol/call-rows.ts";
import { bleedingRowWords, fluidRowWords, urgentRowWords } from "#shared/words/protocol/care-rows.ts";
import { outputRowWords } from "#shared/words/protocol/output-rows.ts";
import { passageRowWords, planningRowWords } from "#shared/words/protocol/planning-rows.ts";
import type { RowWords } from "#shared/words/protocol/row-words.ts";
import { visitRowWords } from "#shared/words/protocol/visit-rows.ts";

export type RowGroup = { readonly head: string; readonly rows: readonly RowWords[] };

/** Every row of a version that is no interval, in words, each with its source. What has no line here would be a figure that nobody reads. */
export const otherRows = (protocol: Protocol): readonly RowGroup[] => [
  { head: "Output", rows: outputRowWords(protocol) },
  { head: "Calls", rows: callRowWords(protocol) },
  { head: "Questions of a call", rows: questionRowWords(protocol) },
  { head: "Red flags, and a tube that is out", rows: urgentRowWords(protocol) },
  { head: "Flush, balloon, tip and anchors", rows: fluidRowWords(protocol) },
  { head: "What passes through what", rows: passageRowWords(protocol) },
  { head: "Planning an exchange", rows: planningRowWords(protocol) },
  { head: "Before a visit", rows: visitRowWords(protocol) },
  { head: "Bleeding risk", rows: bleedingRowWords(protocol) },
];
