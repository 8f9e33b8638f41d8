"use client";

import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { newActId } from "#app/ui/recording/act-id.ts";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import { UndoNotice } from "#app/ui/undo-notice.tsx";
import { telephoneForm } from "#shared/record/clinic/telephone-form.ts";

export type TelephoneRecordFormProps = {
  /** As the page saw it; "" where there is none. */
  readonly phone: string;
  readonly draft: StoredDraft | null;
};

/** Set the number that papers tell patients to ring. What is printed already keeps the old one. */
export function TelephoneRecordForm({ phone: seen, draft }: TelephoneRecordFormProps): ReactNode {
  return (
    <RecordingForm
      fields={telephoneForm.fields({ phone: seen })}
      act="Set the telephone"
      lastSeen={0}
      draft={draft}
      drafts={draftStore("clinic.telephone", "")}
      send={(texts, { actId }) => api.clinic.telephone.mutate({ actId, texts, seen })}
      leaveTo="/clinic"
      saved={({ before, phone }) => <TelephoneSet before={before} phone={phone} />}
    />
  );
}

type SetProps = { readonly before: string; readonly phone: string };

function TelephoneSet({ before, phone }: SetProps): ReactNode {
  const [actId] = useState(newActId);
  const said = phone === "" ? "Papers leave a line for the number." : `Papers say: ${phone}.`;
  return (
    <UndoNotice
      said={`${said} What was printed before does not change by itself.`}
      undo={() => api.clinic.telephone.mutate({ actId, texts: { phone: before }, seen: phone })}
      after="The number before stands again."
    >
      <a href="/clinic">All of the clinic</a>
    </UndoNotice>
  );
}
