"use client";

import type { ReactNode } from "react";
import { api } from "#app/_trpc/client.ts";
import { CallFields } from "#app/call/call-fields.tsx";
import { Recorded } from "#app/record/recorded.tsx";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import type { CallingContext } from "#shared/record/call/calling-context.ts";
import { callingForm } from "#shared/record/call/calling-form.ts";

type CallFormProps = {
  readonly patientId: string;
  readonly context: CallingContext;
  readonly lastSeen: number;
  readonly draft: StoredDraft | null;
};

/** One call, from who was reached to whom a red flag is handed to. Questions stand once somebody was reached. */
export function CallForm({ patientId, context, lastSeen, draft }: CallFormProps): ReactNode {
  const fields = callingForm.fields(context);
  return (
    <RecordingForm
      fields={fields}
      check={(values) => callingForm.check?.(values, context) ?? []}
      act="Save the call"
      lastSeen={lastSeen}
      draft={draft}
      drafts={draftStore("calls.saved", patientId)}
      send={(texts, act) => api.calls.saved.mutate({ ...act, patientId, texts })}
      leaveTo={`/patients/${patientId}`}
      layout={(laid) => (
        <CallFields {...laid} plan={{ fields, draft }} questions={context.questions} patientId={patientId} />
      )}
      saved={({ actId, flags }) => (
        <Recorded said="The call is saved." actId={actId}>
          {flags.map(({ id, handed }) => (
            <a key={id} href={`/patients/${patientId}/flags/${id}`}>
              {handed ? "Red flag: record what was done" : "Red flag: hand it to somebody now"}
            </a>
          ))}{" "}
          <a href="/calls">To the calls</a> <a href={`/patients/${patientId}`}>To the patient</a>
        </Recorded>
      )}
    />
  );
}
