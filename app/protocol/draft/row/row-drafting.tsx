"use client";

import { type ReactNode, useState } from "react";
import { api } from "#app/_trpc/client.ts";
import { DropRow } from "#app/protocol/draft/row/drop-row.tsx";
import { RowDrafted } from "#app/protocol/draft/row/row-drafted.tsx";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import type { RowSpec } from "#shared/protocol/rows/rows-of.ts";
import { rowForm } from "#shared/record/protocol/row-form.ts";

export type RowDraftingProps = {
  readonly row: RowSpec;
  /** Of the draft as the page saw it; 0 where there is none. */
  readonly revision: number;
  /** What was typed here and not saved. */
  readonly draft: StoredDraft | null;
};

/** A row of the draft: typed otherwise, or taken out. */
export function RowDrafting({ row, revision, draft }: RowDraftingProps): ReactNode {
  // The page round the form is read anew while it is open; what is undone is what the row said when it opened.
  const [opened] = useState(row);
  const [dropped, setDropped] = useState<number | null>(null);
  if (dropped !== null) return <RowDrafted was={opened} now={{ revision: dropped, address: null }} />;
  return (
    <RecordingForm
      fields={rowForm.fields(opened)}
      check={(values) => rowForm.check?.(values, opened) ?? []}
      act={opened.stands || !opened.isList ? "Change the row in the draft" : "Add the row to the draft"}
      lastSeen={0}
      draft={draft}
      drafts={draftStore("protocol.row", opened.address)}
      send={(texts, { actId }) =>
        api.protocol.changeRow.mutate({ actId, revision, address: opened.address, texts })
      }
      leaveTo="/protocol/draft"
      saved={(now) => <RowDrafted was={opened} now={now} />}
      beneath={() =>
        opened.stands &&
        opened.mayBeNone && (
          <DropRow address={opened.address} isList={opened.isList} revision={revision} dropped={setDropped} />
        )
      }
    />
  );
}
