import type { ReactNode } from "react";
import { FlagOpened } from "#app/call/flag-opened.tsx";
import { thenRecordHref } from "#app/call/then-record.ts";
import { RecordingFields } from "#app/ui/recording/recording-fields.tsx";
import type { RecordingPlan } from "#app/ui/recording/use-recording.ts";
import type { LaidOut } from "#app/ui/recording-form.tsx";
import type { QuestionInCall } from "#shared/record/call/calling-context.ts";
import { opens, questionField, reachesSomebody } from "#shared/record/call/calling-form.ts";
import type { FieldSpecs } from "#shared/record/field-spec.ts";
import { readWhatCan } from "#shared/record/field-spec.ts";
import { thenRecordWords } from "#shared/words/call-questions.ts";
import styles from "./call.module.css";

type CallFieldsProps<V> = LaidOut & {
  readonly plan: Pick<RecordingPlan<V, never>, "fields" | "draft">;
  readonly questions: readonly QuestionInCall[];
  readonly patientId: string;
};

type Group = { readonly head: string; readonly questions: readonly QuestionInCall[] };

/** Questions of the patient first, then those of each tube under its name. */
function groupsOf(questions: readonly QuestionInCall[]): readonly Group[] {
  const heads = [...new Set(questions.map(({ tube }) => tube?.title ?? "The patient"))];
  return heads.map((head) => ({
    head,
    questions: questions.filter(({ tube }) => (tube?.title ?? "The patient") === head),
  }));
}

/** The fields of a call in the order in which it goes: who was reached, what is asked of whom, whom it is handed to. */
export function CallFields<V>({ plan, questions, patientId, ...laid }: CallFieldsProps<V>): ReactNode {
  const { fields } = plan;
  const said = readWhatCan(fields, laid.texts) as Readonly<Record<string, unknown>>;
  const asked = new Map(questions.map((question) => [questionField(question) as string, question]));
  const names = Object.keys(fields);
  const first = names.findIndex((name) => asked.has(name));
  const own = names.slice(0, first < 0 ? names.indexOf("handedTo") : first);
  const some = (wanted: readonly string[]): FieldSpecs<V> =>
    Object.fromEntries(Object.entries(fields).filter(([name]) => wanted.includes(name))) as FieldSpecs<V>;
  const part = (wanted: readonly string[], after?: (name: string) => ReactNode): ReactNode => (
    <RecordingFields plan={{ fields: some(wanted), draft: plan.draft }} {...laid} after={after} />
  );
  const opened = (name: string): ReactNode => {
    const question = asked.get(name);
    if (question === undefined || !opens(question, said[name] as never)) return null;
    const { thenRecord } = question;
    const href =
      thenRecord === null ? null : thenRecordHref(thenRecord, patientId, question.tube?.id ?? null);
    return (
      <>
        {(question.flag !== null || question.ifSo.length > 0) && <FlagOpened question={question} />}
        {thenRecord !== null && href !== null && (
          <p className={styles.then}>
            <a href={href}>{thenRecordWords[thenRecord]}</a>: what is typed here is kept.
          </p>
        )}
      </>
    );
  };
  const reached = reachesSomebody(laid.texts);
  return (
    <>
      {part(own)}
      {groupsOf(questions)
        .filter((group) => reached || group.questions.some((question) => laid.texts[questionField(question)]))
        .map((group) => (
          <fieldset key={group.head} className={styles.group}>
            <legend>{group.head}</legend>
            {part(group.questions.map(questionField), opened)}
          </fieldset>
        ))}
      {part(names.filter((name) => !own.includes(name) && !asked.has(name)))}
    </>
  );
}
