import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { Microlitres } from "#shared/output/microlitre.ts";
import { readVolume } from "#shared/output/read-volume.ts";
import { type OtherFluid, otherFluids } from "#shared/output/reading.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { asWords, matchWord } from "#shared/record/field/match-word.ts";
import { printMl } from "#shared/record/field/volume-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";

type PutIn = { readonly fluid: OtherFluid; readonly ul: Microlitres };

const FLUID_FIRST = /^([a-z ]*[a-z])\s+([\d.].*)$/i;
const MOST_FLUIDS = 12;

function readPutIn(text: string): Parsed<PutIn> {
  const [, word, amount] = FLUID_FIRST.exec(text) ?? [];
  if (word === undefined || amount === undefined) return unread("fluids-not-understood", { text });
  const fluid = matchWord(word, asWords(otherFluids));
  if (!fluid.ok) return fluid;
  const read = readVolume(amount, "amount");
  if (!read.ok) return read;
  const { volume } = read.value;
  if (volume.certainty !== "confirmed") return unread("fluids-not-understood", { text });
  return parsed({ fluid: fluid.value, ul: volume.value });
}

/** What went in beside flush, each with its volume: "contrast 20, irrigation 500". */
export const fluidsField = (words: FieldWords): FieldSpec<readonly PutIn[]> => ({
  ...words,
  read: (text) => {
    const typed = text.split(/[,;]\s+|[,;](?=[a-z])/i).filter((part) => part.trim() !== "");
    if (typed.length > MOST_FLUIDS) return unread("too-many", { limit: MOST_FLUIDS });
    const fluids: PutIn[] = [];
    for (const part of typed) {
      const read = readPutIn(part.trim());
      if (!read.ok) return read;
      fluids.push(read.value);
    }
    return parsed(fluids);
  },
  echo: (fluids) => fluids.map(({ fluid, ul }) => `${fluid} ${printMl(ul)}`).join(", "),
});
