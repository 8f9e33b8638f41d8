import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { DifferencesTable } from "#app/protocol/draft/differences-table.tsx";
import { DraftTables } from "#app/protocol/draft/draft-tables.tsx";
import { DropDraft } from "#app/protocol/draft/drop-draft.tsx";
import styles from "#app/protocol/protocol.module.css";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { andList } from "#shared/words/and-list.ts";
import { protocolChanges } from "#shared/words/protocol/changes.ts";

export const metadata: Metadata = { title: "Draft of the protocol - Dwellbook" };

const heading = "What does the draft change?";

/** The one draft of the table: what it tells otherwise than what stands, and every row to change. No date moves by it. */
export default async function DraftPage(): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  if (!may(person, "protocol.draft"))
    return (
      <PageFrame frame={frame} heading={heading}>
        <NotForYou back="/protocol" />
      </PageFrame>
    );
  const { stands, draft } = await api.protocol.draft();
  const lede =
    draft === null
      ? `Nothing is drafted: version ${stands.version} stands. The first change begins a draft.`
      : `Draft of version ${stands.version + 1}, begun from version ${draft.base}; changed by ${andList(draft.authors)}.`;
  return (
    <PageFrame frame={frame} heading={heading} lede={lede}>
      <p className={styles.links} data-screen-only>
        <a href="/protocol">What stands</a>
        <a href="/api/protocol">{draft === null ? "What stands" : "The draft"} as a file</a>
        <a href="/protocol/draft/file">Bring in a file</a>
        {draft !== null && <a href="/protocol/draft/note">Say why the table changes</a>}
        {draft !== null && <a href="/protocol/impact">Whom it touches, and sign</a>}
      </p>
      {draft !== null && (
        <>
          <p className={styles.words}>
            {draft.note === "" ? "Nobody has written why the table changes." : `Why: ${draft.note}`}
          </p>
          <DifferencesTable version={stands.version} differences={protocolChanges(stands, draft.protocol)} />
          <DropDraft key={draft.revision} revision={draft.revision} />
        </>
      )}
      <DraftTables protocol={draft?.protocol ?? stands} />
    </PageFrame>
  );
}
