"use client";

import type { ReactNode } from "react";
import { api } from "#app/_trpc/client.ts";
import { RoomsDone } from "#app/rooms/rooms-done.tsx";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import type { Texts } from "#shared/record/field-spec.ts";
import type { RoomsAsked } from "#shared/record/rooms/asked.ts";
import { roomForm } from "#shared/record/rooms/room-form.ts";
import type { Room } from "#shared/visit/room.ts";

type RoomRecordFormProps = {
  readonly rooms: readonly Room[];
  /** The version of the rooms that the page shows. */
  readonly seen: number;
  /** The room that is changed; null for a new one. */
  readonly changes: Room | null;
  readonly kept: { readonly form: string; readonly subject: string; readonly draft: StoredDraft | null };
};

/** Add a room, or change one. */
export function RoomRecordForm({ rooms, seen, changes, kept }: RoomRecordFormProps): ReactNode {
  const context = { rooms, changes };
  const asked = (texts: Texts): RoomsAsked =>
    changes === null ? { kind: "add", texts } : { kind: "change", roomId: changes.id, texts };
  return (
    <RecordingForm
      fields={roomForm.fields(context)}
      check={(values) => roomForm.check?.(values, context) ?? []}
      act={changes === null ? "Add the room" : "Change the room"}
      lastSeen={0}
      draft={kept.draft}
      drafts={draftStore(kept.form, kept.subject)}
      send={(texts, { actId }) => api.rooms.change.mutate({ actId, seen, asked: asked(texts) })}
      leaveTo="/rooms"
      saved={(done) => <RoomsDone done={done} />}
    />
  );
}
