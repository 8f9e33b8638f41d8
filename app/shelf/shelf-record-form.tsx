"use client";

import type { ReactNode } from "react";
import { api } from "#app/_trpc/client.ts";
import { openedWith } from "#app/record/opened-with.ts";
import { ShelfDone } from "#app/shelf/shelf-done.tsx";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import type { Act } from "#app/ui/recording/use-recording.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import type { Texts } from "#shared/record/field-spec.ts";
import { shelfForm } from "#shared/record/shelf/shelf-form.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import { typeTexts } from "#shared/shelf/type-texts.ts";

/** The type that is changed, and when the page saw it change last; null for a new one. */
export type Changes = { readonly type: ShelfType; readonly lastUpdatedAt: number } | null;

export type ShelfRecordFormProps = {
  readonly shelf: readonly ShelfType[];
  readonly draft: StoredDraft | null;
  readonly changes: Changes;
};

/** Add a type to the shelf, or change what is said of one. */
export function ShelfRecordForm({ shelf, draft, changes }: ShelfRecordFormProps): ReactNode {
  const context = { shelf, changes: changes?.type.id ?? null };
  const fields = shelfForm.fields(context);
  const send = (texts: Texts, { actId }: Act) => {
    if (changes === null) return api.shelf.added.mutate({ actId, texts });
    const { type, lastUpdatedAt } = changes;
    return api.shelf.changed.mutate({ actId, texts, typeId: type.id, lastUpdatedAt });
  };
  return (
    <RecordingForm
      fields={changes === null ? fields : openedWith(fields, typeTexts(changes.type))}
      check={(values) => shelfForm.check?.(values, context) ?? []}
      act={changes === null ? "Add the type" : "Change the type"}
      lastSeen={0}
      draft={draft}
      drafts={draftStore(changes === null ? "shelf.added" : "shelf.changed", context.changes ?? "")}
      send={send}
      leaveTo="/shelf"
      saved={({ actId }) => (
        <ShelfDone
          said={changes === null ? "The type is on the shelf." : "The type is changed; what stood is kept."}
          actId={actId}
        />
      )}
    />
  );
}
