"use client";

import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { newActId } from "#app/ui/recording/act-id.ts";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import { UndoNotice } from "#app/ui/undo-notice.tsx";
import { draftNoteForm } from "#shared/record/protocol/note-form.ts";

export type NoteRecordFormProps = {
  readonly note: string;
  readonly revision: number;
  /** What was typed here and not saved. */
  readonly draft: StoredDraft | null;
};

/** Says why the table changes. */
export function NoteRecordForm({ note, revision, draft }: NoteRecordFormProps): ReactNode {
  return (
    <RecordingForm
      fields={draftNoteForm.fields({ note })}
      act="Write it to the draft"
      lastSeen={0}
      draft={draft}
      drafts={draftStore("protocol.note", "")}
      send={(texts, { actId }) => api.protocol.noteDraft.mutate({ actId, revision, texts })}
      leaveTo="/protocol/draft"
      saved={(now) => <NoteWritten before={note} revision={now.revision} />}
    />
  );
}

type WrittenProps = { readonly before: string; readonly revision: number };

function NoteWritten({ before, revision }: WrittenProps): ReactNode {
  const [actId] = useState(newActId);
  return (
    <UndoNotice
      said="The draft says why."
      undo={() => api.protocol.noteDraft.mutate({ actId, revision, texts: { note: before } })}
      after="The draft says what it said before."
    >
      <a href="/protocol/draft">To the draft</a>
    </UndoNotice>
  );
}
