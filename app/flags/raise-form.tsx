"use client";

import type { ReactNode } from "react";
import { api } from "#app/_trpc/client.ts";
import { flagHref } from "#app/flags/flag-pages.ts";
import { FlagRowSays } from "#app/flags/flag-row-says.tsx";
import { openedWith } from "#app/record/opened-with.ts";
import { Recorded } from "#app/record/recorded.tsx";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import type { RaisingContext } from "#shared/record/call/flag-context.ts";
import { raiseFlagForm } from "#shared/record/call/raise-flag-form.ts";
import type { Texts } from "#shared/record/field-spec.ts";

type RaiseFormProps = {
  readonly patientId: string;
  readonly context: RaisingContext;
  readonly lastSeen: number;
  readonly draft: StoredDraft | null;
  /** What stands in the form as it opens: the tube whose page led here. */
  readonly begun: Texts;
};

/** Raises a red flag, and says at once whom it was handed to. */
export function RaiseForm({ patientId, context, lastSeen, draft, begun }: RaiseFormProps): ReactNode {
  const act = "Raise the red flag";
  return (
    <RecordingForm
      fields={openedWith(raiseFlagForm.fields(context), begun)}
      check={(values) => raiseFlagForm.check?.(values, context) ?? []}
      act={act}
      lastSeen={lastSeen}
      draft={draft}
      drafts={draftStore("flag.raised", patientId)}
      send={(texts, sent) => api.flag.raised.mutate({ ...sent, patientId, texts })}
      leaveTo={`/patients/${patientId}`}
      after={{
        field: "row",
        says: ({ row }) => {
          const found = context.rows.find(({ id }) => id === row);
          return found === undefined ? null : <FlagRowSays row={found} />;
        },
      }}
      saved={({ actId, flagId }) => (
        <Recorded said={`${act}: saved.`} actId={actId}>
          <a href={flagHref(patientId, flagId)}>To the red flag</a>
        </Recorded>
      )}
    />
  );
}
