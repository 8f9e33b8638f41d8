import { printDay } from "#shared/day/print-day.ts";
import type { reviewPayloads } from "#shared/tube/review-payloads.ts";
import { ownerName } from "#shared/words/care-events.ts";
import { decidedNames, decisionWords } from "#shared/words/decisions.ts";
import { sentence, type Tell } from "#shared/words/sentence.ts";

/** Reviews as the story tells them. */
export const reviewSentences: { readonly [K in keyof typeof reviewPayloads]: Tell<K> } = {
  "review asked": ({ by, askedBy, reason }) =>
    sentence("Review asked for", [`by ${printDay(by)}`, askedBy !== null && `asked by ${askedBy}`], reason),
  "review decided": ({ decidedBy, decided, words }, nameOf) =>
    sentence(
      "Reviewed",
      [
        `by ${decidedBy}`,
        ...decided.map(
          ({ what, by, owner }) => `${decisionWords[what]} ${printDay(by)} (${ownerName(owner, nameOf)})`,
        ),
      ],
      words,
    ),
  "decision done": ({ what, how }) =>
    sentence(`Done as decided: ${decidedNames[what].toLowerCase()}`, [], how),
};
