import { exampleProtocol } from "#shared/protocol/example.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { changeRow } from "#shared/protocol/rows/change-row.ts";
import { typedRow } from "#shared/protocol/rows/rows-of.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

/** A row with some of its places typed otherwise than they stand. */
export const change = (address: string, texts: Texts, protocol: Protocol = exampleProtocol) =>
  changeRow(protocol, address, { ...typedRow(protocol, address), ...texts });

/** Each refusal as a person meets it: the place and the sentence. */
export const sentences = (address: string, texts: Texts, protocol: Protocol = exampleProtocol) => {
  const result = change(address, texts, protocol);
  return result.ok ? [] : result.refusals.map((refusal) => [refusal.field, refusalSentence(refusal)]);
};
