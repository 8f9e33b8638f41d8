"use client";

import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { flagHref, raiseHref } from "#app/flags/flag-pages.ts";
import { openedWith } from "#app/record/opened-with.ts";
import { Recorded } from "#app/record/recorded.tsx";
import { HoldsUntilReached, type SaidOfOut, TubeOutBeside } from "#app/tube-out/tube-out-beside.tsx";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import { bookingHref } from "#app/visit/visit-pages.ts";
import type { OutContext } from "#shared/record/call/out-context.ts";
import { tubeOutForm } from "#shared/record/call/tube-out-form.ts";
import type { Texts } from "#shared/record/field-spec.ts";

type TubeOutFormProps = {
  readonly patientId: string;
  readonly context: OutContext;
  readonly isExample: boolean;
  readonly lastSeen: number;
  readonly draft: StoredDraft | null;
  /** What stands in the form as it opens: the tube whose page, or whose question, led here. */
  readonly begun: Texts;
};

/** Records a tube that is out; what its rows say stands beside the fields. It ends in three slots and the red flag. */
export function TubeOutForm(props: TubeOutFormProps): ReactNode {
  const { patientId, context, isExample, lastSeen, draft, begun } = props;
  // Once the last tube is told out none is in: what was saved stays on the page all the same.
  const [anyIn] = useState(() => context.tubes.some(({ status }) => status === "in"));
  if (!anyIn) return <p role="status">No tube is in by this record.</p>;
  return (
    <RecordingForm
      fields={openedWith(tubeOutForm.fields(context), begun)}
      check={(values) => tubeOutForm.check?.(values, context) ?? []}
      act="Record the tube that is out"
      lastSeen={lastSeen}
      draft={draft}
      drafts={draftStore("flag.tube-out", patientId)}
      send={(texts, act) => api.flag.tubeOutRecorded.mutate({ ...act, patientId, texts })}
      leaveTo={`/patients/${patientId}`}
      after={{ field: "out", says: (said: SaidOfOut) => <HoldsUntilReached said={said} /> }}
      beside={(said: SaidOfOut) => <TubeOutBeside said={said} today={context.today} isExample={isExample} />}
      saved={({ actId, tubeId, flagId, handed }) => (
        <Recorded said="The tube is recorded as out." actId={actId}>
          <a href={flagHref(patientId, flagId)}>
            {handed ? "To the red flag" : "Red flag: hand it to somebody now"}
          </a>{" "}
          <a href={bookingHref(patientId, tubeId)}>Book the visit, urgent: three slots</a>{" "}
          <a href={`${raiseHref(patientId)}?tube=${tubeId}`}>Raise another red flag: what else was told</a>
        </Recorded>
      )}
    />
  );
}
