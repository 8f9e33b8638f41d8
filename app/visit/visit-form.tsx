"use client";

import type { ReactNode } from "react";
import { api } from "#app/_trpc/client.ts";
import { Recorded } from "#app/record/recorded.tsx";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import type { Act } from "#app/ui/recording/use-recording.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import { stateOfAct, type VisitPageAct, visitPageActs } from "#app/visit/visit-acts.ts";
import { visitHref } from "#app/visit/visit-pages.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import type { FieldSpecs, Texts } from "#shared/record/field-spec.ts";
import { cancellingForm, notingForm } from "#shared/record/visit/noting-form.ts";
import { type PreparingContext, preparingForm } from "#shared/record/visit/preparing-form.ts";

type VisitFormProps = {
  readonly act: Exclude<VisitPageAct, "move">;
  readonly patientId: string;
  readonly visitId: string;
  /** What is to be settled, with what is on record of each. */
  readonly things: PreparingContext["things"];
  readonly lastSeen: number;
  readonly draft: StoredDraft | null;
};

/** Says one thing of a visit. */
export function VisitForm(props: VisitFormProps): ReactNode {
  const { act, things } = props;
  if (act === "settle")
    return (
      <Form
        {...props}
        fields={preparingForm.fields({ things })}
        check={(values) => preparingForm.check?.(values, { things }) ?? []}
      />
    );
  if (act === "cancel") return <Form {...props} fields={cancellingForm.fields()} check={() => []} />;
  return <Form {...props} fields={notingForm.fields()} check={() => []} />;
}

type FormProps<V> = VisitFormProps & {
  readonly fields: FieldSpecs<V>;
  readonly check: (values: V) => readonly Refusal[];
};

function Form<V>({ act, patientId, visitId, lastSeen, draft, fields, check }: FormProps<V>): ReactNode {
  const state = stateOfAct[act];
  const send = (texts: Texts, sent: Act) => {
    const said = { ...sent, patientId, visitId, texts };
    return state === undefined ? api.visit.prepared.mutate(said) : api.visit.noted.mutate({ ...said, state });
  };
  return (
    <RecordingForm
      fields={fields}
      check={check}
      act={visitPageActs[act]}
      lastSeen={lastSeen}
      draft={draft}
      drafts={draftStore(`visit.${act}`, visitId)}
      send={send}
      leaveTo={visitHref(patientId, visitId)}
      saved={(result) => (
        <Recorded said={`${visitPageActs[act]}: saved.`} actId={result.actId}>
          <a href={visitHref(patientId, visitId)}>To the visit</a>
        </Recorded>
      )}
    />
  );
}
