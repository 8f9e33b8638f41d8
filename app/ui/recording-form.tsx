"use client";

import { type ReactNode, useEffect, useRef, useState } from "react";
import { ErrorSummary, type Problem } from "#app/ui/error-summary.tsx";
import { fieldId } from "#app/ui/field.tsx";
import { NoticeLine } from "#app/ui/notice-line.tsx";
import { RecordingFields } from "#app/ui/recording/recording-fields.tsx";
import { type RecordingPlan, useRecording } from "#app/ui/recording/use-recording.ts";
import { namesOf, readWhatCan, type Texts } from "#shared/record/field-spec.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import styles from "./recording-form.module.css";

/** What is typed and what is to mend, for a form that lays out its fields itself. */
export type LaidOut = {
  readonly texts: Texts;
  readonly problems: readonly Problem[];
  readonly typed: (field: string) => void;
};

type RecordingFormProps<V, Result> = RecordingPlan<V, Result> & {
  /** "Save the exchange": the act in words. */
  readonly act: string;
  /** What Enter does, where that is not yet saving: "looks at whom it touches". */
  readonly enter?: string;
  /** What stands in the form's place once it is saved: what was entered, its undo, where to go on. */
  readonly saved: (result: Result) => ReactNode;
  /** What the fields say together so far, such as whether a wire passes. It warns and never blocks. */
  readonly beneath?: (values: Partial<V>) => ReactNode;
  /** The same, in short and in sight while one types: at the side of the fields, or beneath them on a narrow page. */
  readonly beside?: (values: Partial<V>) => ReactNode;
  /** The same, in short, right after the field that it speaks of. */
  readonly after?: { readonly field: keyof V & string; readonly says: (values: Partial<V>) => ReactNode };
  /** Lays out the fields otherwise than one below the other. */
  readonly layout?: (parts: LaidOut) => ReactNode;
  /** Where a field stands, where several have the same name: said in the summary of what is to mend. */
  readonly whereIs?: (field: string) => string | undefined;
};

const LOOK = "Open the record as it now stands, in a new tab.";

/**
 * A form for typing: opens in its first field, says beside each field how it was understood, Enter saves, Escape leaves
 * with what was typed kept. Nothing typed is lost by an error, a lost answer, a session that ended or a closed tab.
 */
export function RecordingForm<V, Result>(props: RecordingFormProps<V, Result>): ReactNode {
  const { fields, act, enter = "saves", saved, beneath, beside, after, draft, layout, whereIs } = props;
  const form = useRef<HTMLFormElement>(null);
  const { texts, phase, refusals, attempt, typed, submit, leave } = useRecording(props, form);
  const [hadDraft] = useState(draft !== null);
  const [first] = namesOf(fields);
  const begun = first === undefined ? undefined : fields[first].initial;

  useEffect(() => {
    if (first === undefined) return;
    const control = document.getElementById(fieldId(first));
    control?.focus();
    // What stands there by default is typed over, as in a field that Tab reaches; what a person typed is not.
    if (control instanceof HTMLInputElement && control.value === begun) control.select();
  }, [first, begun]);

  if (phase.kind === "saved") return <Saved>{saved(phase.result)}</Saved>;

  const problems: readonly Problem[] = refusals.map((refusal) => ({
    field: refusal.field !== undefined && refusal.field in fields ? refusal.field : undefined,
    sentence: refusalSentence(refusal),
    where: refusal.field === undefined ? undefined : whereIs?.(refusal.field),
    look: refusal.code === "changed-meanwhile" ? { href: props.leaveTo, word: LOOK } : undefined,
  }));
  return (
    <form
      ref={form}
      className={beside ? styles.wideForm : styles.form}
      method="post"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void submit();
      }}
      onKeyDown={(event) => {
        if (event.key === "Escape" && !event.defaultPrevented) void leave();
      }}
    >
      <ErrorSummary problems={problems} attempt={attempt} />
      {hadDraft && <NoticeLine>What you typed here and did not save is here again.</NoticeLine>}
      {phase.kind === "unanswered" && (
        <NoticeLine>
          No answer came, so it is not known whether this was entered. Save again: it is entered only once.
        </NoticeLine>
      )}
      <div className={beside && styles.withBeside}>
        {layout?.({ texts, problems, typed }) ?? (
          <RecordingFields
            plan={props}
            texts={texts}
            problems={problems}
            typed={typed}
            after={(name) => name === after?.field && after.says(readWhatCan(fields, texts))}
          />
        )}
        {beside && <div className={styles.beside}>{beside(readWhatCan(fields, texts))}</div>}
      </div>
      <div className={styles.acts}>
        <button type="submit" disabled={phase.kind === "opening"} aria-disabled={phase.kind === "sending"}>
          {phase.kind === "sending" ? "Saving ..." : act}
        </button>
        <button type="button" onClick={() => void leave()}>
          Leave, keep what is typed
        </button>
        <span className={styles.keys}>Enter {enter}. Escape leaves.</span>
      </div>
      {beneath?.(readWhatCan(fields, texts))}
    </form>
  );
}

/** Takes the focus, so that what was saved is read out and its undo is the next key away. */
function Saved({ children }: { readonly children: ReactNode }): ReactNode {
  const notice = useRef<HTMLDivElement>(null);
  useEffect(() => notice.current?.focus(), []);
  return (
    <div ref={notice} tabIndex={-1}>
      {children}
    </div>
  );
}
