"use client";

import type { ReactNode } from "react";
import { api } from "#app/_trpc/client.ts";
import { Asked } from "#app/output/asked.tsx";
import { DiaryLayout } from "#app/output/diary-layout.tsx";
import { Recorded } from "#app/record/recorded.tsx";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import { parsed } from "#shared/errors/refusal.ts";
import type { FieldSpecs, Texts } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";
import { rowOfCell } from "#shared/record/output/diary-cells.ts";
import { diaryOpening, readDiary } from "#shared/record/output/diary-form.ts";
import { diaryDoubtsByCell } from "#shared/words/reading-doubts.ts";

export type DiaryRecordFormProps = {
  readonly patientId: string;
  readonly tubeId: string;
  readonly context: FormContext;
  readonly flushOrdered: boolean;
  readonly lastSeen: number;
  readonly draft: StoredDraft | null;
};

/** Rows are read one after another, so the form holds their texts; the diary reads them all at once. */
const textFields = (context: FormContext): FieldSpecs<Texts> =>
  Object.fromEntries(
    Object.entries(diaryOpening(context)).map(([name, initial]) => [
      name,
      { label: name, initial, read: (text: string) => parsed(text) },
    ]),
  );

const rowNamed = (field: string): string | undefined => {
  const row = rowOfCell(field);
  return row === undefined ? undefined : `Row ${row}`;
};

/** Log several emptyings in one act. */
export function DiaryRecordForm(props: DiaryRecordFormProps): ReactNode {
  const { patientId, tubeId, context, flushOrdered, draft } = props;
  const fields = textFields(context);
  const leaveTo = `/tubes/${tubeId}/output`;
  return (
    <RecordingForm
      fields={fields}
      check={(texts) => {
        const read = readDiary(texts, context);
        return read.ok ? [] : read.refusals;
      }}
      act="Log the diary"
      lastSeen={props.lastSeen}
      draft={draft}
      drafts={draftStore("diary", tubeId)}
      send={(texts, act) => api.reading.diary.mutate({ ...act, texts, patientId, tubeId })}
      leaveTo={leaveTo}
      whereIs={rowNamed}
      layout={(parts) => <DiaryLayout {...{ context, draft, flushOrdered }} {...parts} />}
      saved={({ actId, readingIds, asked }) => (
        <>
          <Recorded said={`The diary is logged: ${countWords(readingIds.length)}.`} actId={actId}>
            <a href={leaveTo}>To the output</a>
            <a href={`/tubes/${tubeId}/record/diary`}>Log another</a>
          </Recorded>
          <Asked
            sentences={Object.entries(diaryDoubtsByCell(asked, context.zone)).map(
              ([cell, sentences]) => `${rowNamed(cell)}: ${sentences}`,
            )}
          />
        </>
      )}
    />
  );
}

const countWords = (count: number): string => (count === 1 ? "one emptying" : `${count} emptyings`);
