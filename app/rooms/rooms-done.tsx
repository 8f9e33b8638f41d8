"use client";

import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { NoticeLine } from "#app/ui/notice-line.tsx";
import { newActId } from "#app/ui/recording/act-id.ts";
import { UndoNotice } from "#app/ui/undo-notice.tsx";
import { LostSlots } from "#app/visit/lost-slots.tsx";
import { roomsChangeWords } from "#shared/words/rooms.ts";

type RoomsDoneProps = { readonly done: Awaited<ReturnType<typeof api.rooms.change.mutate>> };

/** What a change of the rooms did, and its undo. */
export function RoomsDone({ done: { version, changed, changes, lost } }: RoomsDoneProps): ReactNode {
  const [actId] = useState(newActId);
  const links = (
    <>
      <a href="/rooms">To the rooms</a>
      <a href="/rooms/new">Add a room</a>
    </>
  );
  if (!changed)
    return <NoticeLine>The room stands like this already: there was nothing to save. {links}</NoticeLine>;
  return (
    <>
      <UndoNotice
        said={changes.map(roomsChangeWords).join(" ")}
        undo={() => api.rooms.restore.mutate({ actId, seen: version, version: version - 1 })}
        after="The rooms before stand again."
      >
        {links}
      </UndoNotice>
      <LostSlots lost={lost} />
    </>
  );
}
