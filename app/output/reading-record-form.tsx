"use client";

import type { ReactNode } from "react";
import { api } from "#app/_trpc/client.ts";
import { Asked } from "#app/output/asked.tsx";
import styles from "#app/output/output.module.css";
import { openedWith } from "#app/record/opened-with.ts";
import { Recorded } from "#app/record/recorded.tsx";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import type { Act } from "#app/ui/recording/use-recording.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import { netVolume } from "#shared/output/net-volume.ts";
import { voidForm } from "#shared/record/amend/void-form.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";
import { type ReadingDoubt, readingDoubts, type TypedReading } from "#shared/record/output/reading-doubts.ts";
import { readingForm } from "#shared/record/output/reading-form.ts";
import { netSentence } from "#shared/words/output.ts";
import { doubtsByField, readingDoubtSentence } from "#shared/words/reading-doubts.ts";

export type ReadingRecordFormProps = {
  readonly patientId: string;
  readonly tubeId: string;
  readonly context: FormContext;
  readonly flushOrdered: boolean;
  readonly lastSeen: number;
  readonly draft: StoredDraft | null;
  /** The reading that is corrected, with what it says now; null for a new one. */
  readonly corrects: { readonly readingId: string; readonly texts: Texts } | null;
};

type SavedReading = {
  readonly actId: string;
  readonly readingId: string;
  readonly asked: readonly ReadingDoubt[];
};

/** The net of what is typed so far, by the same sum as on the server. */
function Net({
  typed,
  flushOrdered,
}: {
  readonly typed: TypedReading;
  readonly flushOrdered: boolean;
}): ReactNode {
  const { drained, flushGiven, flushWithdrawn, basis } = typed;
  if (
    drained === undefined ||
    flushGiven === undefined ||
    flushWithdrawn === undefined ||
    basis === undefined
  )
    return <output className={styles.lines} />;
  const net = netVolume({ gross: drained.volume, flushGiven, flushWithdrawn, basis }, flushOrdered);
  return <output className={styles.lines}>{netSentence(net)}</output>;
}

/** Log an emptying, or put a corrected reading in the place of one. */
export function ReadingRecordForm(props: ReadingRecordFormProps): ReactNode {
  const { patientId, tubeId, context, flushOrdered, corrects } = props;
  const fields = readingForm.fields(context);
  const { reason } = voidForm.fields();
  const check = (values: Parameters<typeof readingForm.entry>[0]) =>
    readingForm.check?.(values, context) ?? [];
  const send = (texts: Texts, act: Act) =>
    corrects === null
      ? api.reading.recorded.mutate({ ...act, texts, patientId, tubeId })
      : api.reading.corrected.mutate({ ...act, texts, patientId, readingId: corrects.readingId });
  const leaveTo = `/tubes/${tubeId}/output`;
  const shared = {
    lastSeen: props.lastSeen,
    draft: props.draft,
    send,
    leaveTo,
    doubts: (typed: TypedReading) => doubtsByField(readingDoubts(typed, context), context.zone),
    beneath: (typed: TypedReading) => <Net typed={typed} flushOrdered={flushOrdered} />,
    saved: ({ actId, readingId, asked }: SavedReading) => (
      <>
        <Recorded
          said={corrects === null ? "The emptying is logged." : "The reading is corrected."}
          actId={actId}
        >
          <a href={leaveTo}>To the output</a>
          <a href={`/tubes/${tubeId}/record/reading`}>Log another</a>
          {asked.length > 0 && <a href={`${leaveTo}/${readingId}/correct`}>Correct it</a>}
        </Recorded>
        <Asked sentences={asked.map((doubt) => readingDoubtSentence(doubt, context.zone))} />
      </>
    ),
  };
  return corrects === null ? (
    <RecordingForm
      {...shared}
      fields={fields}
      check={check}
      act="Log the emptying"
      drafts={draftStore("reading", tubeId)}
    />
  ) : (
    <RecordingForm
      {...shared}
      fields={{ reason: { ...reason, label: "Why it is changed" }, ...openedWith(fields, corrects.texts) }}
      check={(values) => check(values)}
      act="Correct the reading"
      drafts={draftStore("reading.corrected", corrects.readingId)}
    />
  );
}
