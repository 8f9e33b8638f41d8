"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useEffect, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { newActId } from "#app/ui/recording/act-id.ts";
import { UndoNotice } from "#app/ui/undo-notice.tsx";

type RecordedProps = {
  /** What was entered: "Exchanged". */
  readonly said: string;
  /** The act that is offered to be taken back. */
  readonly actId: string;
  readonly children: ReactNode;
};

/** What stands in a form's place once it is saved. The page round it is asked for anew, so that it says what comes next now. */
export function Recorded({ said, actId, children }: RecordedProps): ReactNode {
  const router = useRouter();
  const [undoId] = useState(newActId);
  useEffect(() => router.refresh(), [router]);

  const undo = async (): Promise<void> => {
    await api.record.undone.mutate({ actId: undoId, undoes: actId });
    router.refresh();
  };
  return (
    <UndoNotice said={said} undo={undo}>
      {children}
    </UndoNotice>
  );
}
