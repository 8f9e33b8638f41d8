import { parsed } from "#shared/errors/refusal.ts";
import type { Microlitres } from "#shared/output/microlitre.ts";
import { readVolume } from "#shared/output/read-volume.ts";
import { factWords } from "#shared/record/field/fact-words.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { printMl } from "#shared/record/field/volume-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";

/** A volume that was put in; blank is unknown. */
export const givenField = (words: FieldWords): FieldSpec<Fact<Microlitres>> => ({
  ...words,
  read: (text) => {
    if (text.trim() === "") return parsed(unknownFact);
    const read = readVolume(text, "amount");
    return read.ok ? parsed(read.value.volume) : read;
  },
  echo: (volume) => factWords(volume, printMl),
});
