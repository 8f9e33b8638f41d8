import type { Given } from "#shared/case/case-schema.ts";
import type { Json } from "#shared/case/json.ts";
import { lackingField } from "#shared/case/lacking-field.ts";
import type { CaseBooks } from "#shared/case/looking.ts";
import { type Telling, told } from "#shared/case/telling.ts";
import { chainOf } from "#shared/fit/chain.ts";
import { passageRowsOf } from "#shared/fit/tube-in-place.ts";
import { chainFields, readChain } from "#shared/record/shelf/read-chain.ts";
import { pairLines } from "#shared/words/chain.ts";

/** Things that lie one in another, as the page Sizes reads and answers them: each pair, and the first that decides. A refusal names the place of its thing. */
export function chainAnswer({ things }: Given<"chain">, { protocol }: CaseBooks): Telling<Json> {
  for (const [index, { sort, typed }] of things.entries()) {
    const lacking = lackingField(typed, { form: sort, place: index + 1, fields: chainFields });
    if (lacking !== null) return lacking;
  }
  const read = readChain(things.map(({ sort, typed }) => ({ sort, texts: typed })));
  if (!read.ok) {
    const at = read.refusals.findIndex((refusals) => refusals.length > 0);
    return { kind: "refused", entry: at + 1, refusals: read.refusals[at] ?? [] };
  }
  const chain = chainOf(read.things, passageRowsOf({ found: "no row" }, protocol.passage));
  return told({
    bySize: chain.bySize?.verdict ?? null,
    byLength: chain.byLength?.verdict ?? null,
    pairs: chain.pairs.map((pair) => {
      const { bySize, byLength } = pairLines(pair);
      return {
        inner: pair.inner.sort,
        outer: pair.outer.sort,
        bySize: pair.bySize.verdict,
        sizeLine: bySize,
        byLength: pair.byLength.verdict,
        lengthLine: byLength,
      };
    }),
  });
}
