import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { NoteRecordForm } from "#app/protocol/draft/note/note-record-form.tsx";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";

export const metadata: Metadata = { title: "Why the protocol changes - Dwellbook" };

/** The reason of a draft: kept with the version that an approver signs. */
export default async function NotePage(): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  const isAllowed = may(person, "protocol.noteDraft");
  const draft = isAllowed ? (await api.protocol.draft()).draft : null;
  return (
    <PageFrame
      frame={frame}
      heading="Why does the table change?"
      lede={<a href="/protocol/draft">The draft</a>}
    >
      {!isAllowed && <NotForYou back="/protocol" />}
      {isAllowed && draft === null && <p>There is no draft yet: change a row first.</p>}
      {draft !== null && (
        <NoteRecordForm
          note={draft.note}
          revision={draft.revision}
          draft={await api.draft.load({ form: "protocol.note", subject: "" })}
        />
      )}
    </PageFrame>
  );
}
