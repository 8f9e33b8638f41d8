"use client";

import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { rowHref } from "#app/protocol/draft/row-href.ts";
import { newActId } from "#app/ui/recording/act-id.ts";
import { UndoNotice } from "#app/ui/undo-notice.tsx";
import type { RowSpec } from "#shared/protocol/rows/rows-of.ts";

type RowDraftedProps = {
  /** The row as the form opened with it. */
  readonly was: RowSpec;
  /** The draft since, and where the row stands in it; null where it is out. */
  readonly now: { readonly revision: number; readonly address: string | null };
};

const saidOf = ({ was, now }: RowDraftedProps): string => {
  if (now.address === null) return `${was.called}: out of the draft.`;
  return was.stands ? `${was.called}: changed in the draft.` : `${was.called}: in the draft.`;
};

/** Says what the draft now has, and offers to take it back. A row that was dropped from a list comes back at its end. */
export function RowDrafted({ was, now }: RowDraftedProps): ReactNode {
  const [actId] = useState(newActId);
  const { revision, address } = now;
  const undo = (): Promise<unknown> => {
    if (!was.stands && address !== null) return api.protocol.dropRow.mutate({ actId, revision, address });
    const texts = Object.fromEntries(was.leaves.map(({ path, text }) => [path, text]));
    const back = address ?? (was.isList ? was.path : was.address);
    return api.protocol.changeRow.mutate({ actId, revision, address: back, texts });
  };
  return (
    <UndoNotice
      said={`${saidOf({ was, now })} No date moves until an approver signs.`}
      undo={undo}
      after="The draft says of it what it said before."
    >
      <a href="/protocol/draft">To the draft</a>
      {was.isList && <a href={rowHref(was.path)}>Add a row like it</a>}
    </UndoNotice>
  );
}
