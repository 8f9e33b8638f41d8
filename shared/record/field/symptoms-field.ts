import { parsed } from "#shared/errors/refusal.ts";
import type { Reading, SessionSymptom } from "#shared/output/reading.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { wordsField } from "#shared/record/field/words-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { sessionSymptomWords } from "#shared/words/session-symptoms.ts";

/** What was felt during a session: "cough, pain"; "none" is an answer, a blank or "?" is none. */
export function symptomsField(words: FieldWords): FieldSpec<Reading["symptoms"]> {
  const felt = wordsField<SessionSymptom>(words, sessionSymptomWords);
  return {
    ...words,
    read: (text) => {
      const typed = text.trim().toLowerCase();
      if (["", "?", "not recorded"].includes(typed)) return parsed("not recorded");
      if (["none", "no", "nothing"].includes(typed)) return parsed([]);
      const read = felt.read(text);
      return read.ok ? parsed([...(read.value ?? [])]) : read;
    },
    echo: (symptoms) => (symptoms === "not recorded" ? symptoms : symptoms.join(", ") || "nothing felt"),
  };
}
