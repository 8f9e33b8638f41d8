"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { newActId } from "#app/ui/recording/act-id.ts";
import { UndoNotice } from "#app/ui/undo-notice.tsx";

type UndoActProps = {
  readonly said: string;
  readonly undoes: string;
  /** Where to go on: links. */
  readonly children?: ReactNode;
};

/** Takes back everything that one act recorded. */
export function UndoAct({ said, undoes, children }: UndoActProps): ReactNode {
  const router = useRouter();
  const [actId] = useState(newActId);
  const undo = async (): Promise<void> => {
    await api.record.undone.mutate({ actId, undoes });
    router.refresh();
  };
  return (
    <UndoNotice said={said} undo={undo}>
      {children}
    </UndoNotice>
  );
}
