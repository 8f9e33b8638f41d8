import { parsed } from "#shared/errors/refusal.ts";
import { factWords } from "#shared/record/field/fact-words.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { matchWord } from "#shared/record/field/match-word.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";
import type { Side } from "#shared/tube/vocabulary.ts";
import { sideWords } from "#shared/words/sides.ts";

/** "l", "right", "tx", "~left", "?". Blank says nothing: whether a side is needed hangs on the kind. */
export const sideField = (words: FieldWords): FieldSpec<Fact<Side> | undefined> => ({
  ...words,
  read: (text) => {
    const typed = text.trim();
    if (typed === "") return parsed(undefined);
    if (typed === "?") return parsed(unknownFact);
    const about = typed.startsWith("~");
    const side = matchWord(about ? typed.slice(1) : typed, sideWords);
    return side.ok ? parsed({ certainty: about ? "estimated" : "confirmed", value: side.value }) : side;
  },
  echo: (side) => factWords(side, (word) => word),
});
