"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { newActId } from "#app/ui/recording/act-id.ts";
import { UndoNotice } from "#app/ui/undo-notice.tsx";

type ShelfDoneProps = {
  readonly said: string;
  /** The act that is offered to be taken back. */
  readonly actId: string;
};

/** What an act on the shelf did, and its undo. */
export function ShelfDone({ said, actId: undoes }: ShelfDoneProps): ReactNode {
  const router = useRouter();
  const [actId] = useState(newActId);
  const undo = async (): Promise<void> => {
    await api.record.undone.mutate({ actId, undoes });
    router.refresh();
  };
  return (
    <UndoNotice said={said} undo={undo} after="What was new is off the shelf again; all else is as before.">
      <a href="/shelf">To the shelf</a>
      <a href="/shelf/new">Add a type</a>
    </UndoNotice>
  );
}
