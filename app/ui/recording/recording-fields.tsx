import { Fragment, type ReactNode, useState } from "react";
import type { Problem } from "#app/ui/error-summary.tsx";
import { Field } from "#app/ui/field.tsx";
import { openingTexts, type RecordingPlan } from "#app/ui/recording/use-recording.ts";
import { namesOf, readField, readWhatCan, type Texts } from "#shared/record/field-spec.ts";
import styles from "./recording-fields.module.css";

type RecordingFieldsProps<V> = {
  readonly plan: Pick<RecordingPlan<V, never>, "fields" | "draft" | "doubts">;
  readonly texts: Texts;
  readonly problems: readonly Problem[];
  readonly typed: (field: string) => void;
  /** What stands right after a field: a warning where the fact is entered. */
  readonly after?: ((field: keyof V & string) => ReactNode) | undefined;
};

/**
 * The fields, each with what was understood; those that most entries do without stand folded away. A field speaks of what is to
 * mend once it has been left, not while it is typed in.
 */
export function RecordingFields<V>(props: RecordingFieldsProps<V>): ReactNode {
  const { plan, texts, problems, typed, after } = props;
  const { fields } = plan;
  const together = plan.doubts?.(readWhatCan(fields, texts)) ?? {};
  const [opening] = useState(() => openingTexts(plan));
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());

  const field = (name: keyof V & string): ReactNode => {
    const { label, hint, choices, long } = fields[name];
    const reading = readField(fields[name], texts[name] ?? "");
    const refused = problems.find((problem) => problem.field === name)?.sentence;
    const unreadable = left.has(name) && texts[name] !== "" ? reading.problem : undefined;
    return (
      <Field
        key={name}
        {...{ name, label, hint, choices, long }}
        echo={reading.echo}
        doubt={[reading.doubt, together[name]].filter(Boolean).join(" ") || undefined}
        problem={refused ?? unreadable}
        control={{
          defaultValue: opening[name],
          onInput: () => typed(name),
          onBlur: () => setLeft((before) => new Set([...before, name])),
        }}
      />
    );
  };
  const asked = namesOf(fields).filter((name) => texts[name] || (fields[name].belongs?.(texts) ?? true));
  const shown = asked.filter((name) => fields[name].detail !== true);
  const folded = asked.filter((name) => fields[name].detail === true);
  const used = folded.some(
    (name) => opening[name] !== (fields[name].initial ?? "") || problems.some((each) => each.field === name),
  );
  return (
    <div className={styles.fields}>
      {shown.map((name) => (
        <Fragment key={name}>
          {field(name)}
          {after?.(name)}
        </Fragment>
      ))}
      {folded.length > 0 && <Folded open={used}>{folded.map(field)}</Folded>}
    </div>
  );
}

/** Opens by itself where something stands in it or is to mend, and stays; closed, its fields still count. */
function Folded({ open, children }: { readonly open: boolean; readonly children: ReactNode }): ReactNode {
  const [opened, setOpened] = useState(open);
  if (open && !opened) setOpened(true);
  return (
    <details className={styles.folded} open={opened || undefined}>
      <summary>More that is known</summary>
      {children}
    </details>
  );
}
