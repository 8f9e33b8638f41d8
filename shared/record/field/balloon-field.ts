import { parsed, unread } from "#shared/errors/refusal.ts";
import { toMl } from "#shared/output/microlitre.ts";
import { readVolume } from "#shared/output/read-volume.ts";
import { factWords } from "#shared/record/field/fact-words.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";
import { MOST_BALLOON_ML } from "#shared/tube/entry-limits.ts";

/** Water in the balloon, in mL. Blank says nothing. */
export const balloonField = (words: FieldWords): FieldSpec<Fact<number> | undefined> => ({
  ...words,
  read: (text) => {
    if (text.trim() === "") return parsed(undefined);
    const typed = readVolume(text, "amount");
    if (!typed.ok) return typed;
    const { volume } = typed.value;
    if (volume.certainty === "unknown") return parsed(unknownFact);
    const ml = toMl(volume.value);
    if (ml > MOST_BALLOON_ML)
      return unread("volume-absurd", { text: text.trim(), limit: `${MOST_BALLOON_ML} mL` });
    return parsed({ certainty: volume.certainty, value: ml });
  },
  echo: (fact) => factWords(fact, (ml) => `${ml} mL`),
});

/** The same where it has to be said, though "?" will do. `what` completes "Type ...". */
export function neededBalloonField(words: FieldWords, what: string): FieldSpec<Fact<number>> {
  const { read, echo, ...shown } = balloonField(words);
  return {
    ...shown,
    read: (text) => {
      const water = read(text);
      if (!water.ok) return water;
      return water.value === undefined ? unread("text-missing", { what }) : parsed(water.value);
    },
    echo,
  };
}
