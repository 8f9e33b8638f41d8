import type { ComponentProps, ReactNode } from "react";
import type { Choice } from "#shared/record/field-spec.ts";
import styles from "./field.module.css";

type FieldProps = {
  readonly name: string;
  readonly label: string;
  /** How it may be typed. Stands below the field while it is filled in. */
  readonly hint?: string | undefined;
  /** What was understood, as it will be stored. */
  readonly echo?: string | undefined;
  /** What is asked of it: it may be a slip. Stands beside the echo. */
  readonly doubt?: string | undefined;
  /** What to mend. Takes the place of the echo. */
  readonly problem?: string | undefined;
  /** A list of choices, or a long text; otherwise one line. */
  readonly choices?: readonly Choice[] | undefined;
  readonly long?: boolean | undefined;
  /** Label over control over what is said, for several fields side by side. */
  readonly stacked?: boolean;
  readonly control?: ComponentProps<"input"> & ComponentProps<"select"> & ComponentProps<"textarea">;
};

/** The id of a field's control, for a summary that links to it. */
export const fieldId = (name: string): string => `field-${name}`;

/** Label, control, and beside it what was understood or what to mend. */
export function Field(props: FieldProps): ReactNode {
  const { name, label, hint, echo, doubt, problem, stacked } = props;
  const id = fieldId(name);
  return (
    <div className={stacked ? styles.stacked : styles.field}>
      <label className={styles.label} htmlFor={id}>
        {label}
      </label>
      <Control {...props} />
      <output className={styles.beside} htmlFor={id} id={`${id}-beside`}>
        {problem !== undefined && <span className={styles.problem}>{problem}</span>}
        {problem === undefined && echo !== undefined && <span className={styles.echo}>{echo}</span>}
        {problem === undefined && doubt !== undefined && <span className={styles.doubt}>{doubt}</span>}
      </output>
      {hint !== undefined && (
        <p className={styles.hint} id={`${id}-hint`}>
          {hint}
        </p>
      )}
    </div>
  );
}

function Control({ name, hint, problem, choices, long, control }: FieldProps): ReactNode {
  const id = fieldId(name);
  const shared = {
    ...control,
    id,
    name,
    className: styles.control,
    "aria-invalid": problem !== undefined,
    "aria-describedby": hint === undefined ? `${id}-beside` : `${id}-beside ${id}-hint`,
  };
  if (choices !== undefined) {
    return (
      <select {...shared}>
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
    );
  }
  if (long) return <textarea {...shared} />;
  return <input autoComplete="off" {...shared} />;
}
