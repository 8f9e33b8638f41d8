import { type ReactNode, useState } from "react";
import { Field } from "#app/ui/field.tsx";
import { type FieldSpecs, readField, type Texts } from "#shared/record/field-spec.ts";

type ThingFieldProps<V> = {
  readonly fields: FieldSpecs<V>;
  readonly field: keyof V & string;
  /** What the control is called on the page. */
  readonly name: string;
  readonly texts: Texts;
  /** What is to mend, of this field or of it against another. */
  readonly toMend: string | undefined;
  readonly typed: (text: string) => void;
};

/** One field of one thing. It speaks of what is to mend once it has been left; what fields say against one another, at once. */
export function ThingField<V>({ fields, field, name, texts, toMend, typed }: ThingFieldProps<V>): ReactNode {
  const [isLeft, setIsLeft] = useState(false);
  const { label, hint, choices, belongs, initial = "" } = fields[field];
  const text = texts[field] ?? initial;
  if (text === "" && belongs?.(texts) === false) return null;
  // What is blank is unknown, and is not said again in every field.
  const { echo, problem } = text.trim() === "" ? {} : readField(fields[field], text);
  return (
    <Field
      stacked
      {...{ name, label, hint, choices, echo }}
      problem={problem === undefined || isLeft ? toMend : undefined}
      control={{
        defaultValue: text,
        onInput: ({ currentTarget: { value } }) => typed(value),
        onBlur: () => setIsLeft(true),
      }}
    />
  );
}
