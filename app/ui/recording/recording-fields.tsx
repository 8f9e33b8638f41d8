import { type ReactNode, useState } from "react";
import type { Problem } from "#app/ui/error-summary.tsx";
import { Field } from "#app/ui/field.tsx";
import { openingTexts, type RecordingPlan } from "#app/ui/recording/use-recording.ts";
import { namesOf, readField, type Texts } from "#shared/record/field-spec.ts";
import styles from "./recording-fields.module.css";

type RecordingFieldsProps<V> = {
  readonly plan: Pick<RecordingPlan<V, never>, "fields" | "draft">;
  readonly texts: Texts;
  readonly problems: readonly Problem[];
  readonly typed: (field: string) => void;
};

/** The fields, each with what was understood. A field speaks of what is to mend once it has been left, not while it is typed in. */
export function RecordingFields<V>({ plan, texts, problems, typed }: RecordingFieldsProps<V>): ReactNode {
  const { fields } = plan;
  const [opening] = useState(() => openingTexts(plan));
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());

  return (
    <div className={styles.fields}>
      {namesOf(fields).map((name) => {
        const { label, hint, choices, long } = fields[name];
        const reading = readField(fields[name], texts[name] ?? "");
        const refused = problems.find((problem) => problem.field === name)?.sentence;
        const unreadable = left.has(name) && texts[name] !== "" ? reading.problem : undefined;
        return (
          <Field
            key={name}
            {...{ name, label, hint, choices, long }}
            echo={reading.echo}
            problem={refused ?? unreadable}
            control={{
              defaultValue: opening[name],
              onInput: () => typed(name),
              onBlur: () => setLeft((before) => new Set([...before, name])),
            }}
          />
        );
      })}
    </div>
  );
}
