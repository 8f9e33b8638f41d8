"use client";

import type { ReactNode } from "react";
import { api } from "#app/_trpc/client.ts";
import { flagHref } from "#app/flags/flag-pages.ts";
import { Recorded } from "#app/record/recorded.tsx";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import type { FlagContext } from "#shared/record/call/flag-context.ts";
import { flagDoneForm } from "#shared/record/call/flag-done-form.ts";
import { handFlagForm } from "#shared/record/call/hand-flag-form.ts";

export type FlagAct = "handed" | "done";

const words = { handed: "Hand the red flag over", done: "Record what was done" } as const;
const forms = { handed: handFlagForm, done: flagDoneForm } as const;

type FlagFormProps = {
  readonly act: FlagAct;
  readonly patientId: string;
  readonly flagId: string;
  readonly context: FlagContext;
  readonly lastSeen: number;
  readonly draft: StoredDraft | null;
};

/** Hands a red flag over, or closes it. */
export function FlagForm(props: FlagFormProps): ReactNode {
  return props.act === "handed" ? (
    <Form {...props} form={forms.handed} />
  ) : (
    <Form {...props} form={forms.done} />
  );
}

type Shown<V> = {
  readonly form: {
    readonly fields: (context: FlagContext) => Parameters<typeof RecordingForm<V, unknown>>[0]["fields"];
    readonly check?: (values: V, context: FlagContext) => ReturnType<NonNullable<typeof handFlagForm.check>>;
  };
};

function Form<V>(props: FlagFormProps & Shown<V>): ReactNode {
  const { act, form, context, patientId, flagId, lastSeen, draft } = props;
  return (
    <RecordingForm
      fields={form.fields(context)}
      check={(values) => form.check?.(values, context) ?? []}
      act={words[act]}
      lastSeen={lastSeen}
      draft={draft}
      drafts={draftStore(`flag.${act}`, flagId)}
      send={(texts, sent) => api.flag[act].mutate({ ...sent, patientId, flagId, texts })}
      leaveTo={`/patients/${patientId}`}
      saved={({ actId }) => (
        <Recorded said={`${words[act]}: saved.`} actId={actId}>
          <a href={flagHref(patientId, flagId)}>To the red flag</a>
        </Recorded>
      )}
    />
  );
}
