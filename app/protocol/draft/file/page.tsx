import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { FileForm } from "#app/protocol/draft/file/file-form.tsx";
import styles from "#app/protocol/protocol.module.css";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";

export const metadata: Metadata = { title: "A file for the draft - Dwellbook" };

/** The rows of a file in place of those of the draft: all of them, or a list of what is to mend. */
export default async function FilePage(): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  const isAllowed = may(person, "protocol.bringFile");
  return (
    <PageFrame
      frame={frame}
      heading="Which file holds the rows?"
      lede={isAllowed ? <a href="/protocol/draft">The draft</a> : undefined}
    >
      {isAllowed ? (
        <>
          <p className={styles.words}>
            Its columns are row, figure and value, one figure a line, as{" "}
            <a href="/api/protocol">the table as a file</a> has them. Blank values are "no row". A row of a
            list that has no line is dropped; every other row keeps its lines.
          </p>
          <FileForm revision={(await api.protocol.draft()).draft?.revision ?? 0} />
        </>
      ) : (
        <NotForYou back="/protocol" />
      )}
    </PageFrame>
  );
}
