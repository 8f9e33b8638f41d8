import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import type { Query } from "#app/lists/filter-address.ts";
import { RowDrafting } from "#app/protocol/draft/row/row-drafting.tsx";
import styles from "#app/protocol/protocol.module.css";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { rowAt } from "#shared/protocol/rows/rows-of.ts";
import { rowSays } from "#shared/words/protocol/changes.ts";

export const metadata: Metadata = { title: "A row of the draft - Dwellbook" };

const heading = "What shall this row say?";

/** One row of the draft in a form: the same form for every row, made from what the row says of itself. */
export default async function RowPage(props: { readonly searchParams: Promise<Query> }): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  if (!may(person, "protocol.changeRow"))
    return (
      <PageFrame frame={frame} heading={heading}>
        <NotForYou back="/protocol" />
      </PageFrame>
    );
  const { address } = await props.searchParams;
  const { stands, draft } = await api.protocol.draft();
  const row = rowAt(draft?.protocol ?? stands, typeof address === "string" ? address : "");
  if (row === null) notFound();
  const standing = rowSays(stands, row.address);
  const drafted = draft === null ? standing : rowSays(draft.protocol, row.address);
  const isDrafted = JSON.stringify(drafted) !== JSON.stringify(standing);
  return (
    <PageFrame
      frame={frame}
      heading={heading}
      lede={row.stands || !row.isList ? row.called : `A new row: ${row.called}`}
    >
      <Says who={`Version ${stands.version}`} lines={standing} />
      {isDrafted && <Says who="The draft" lines={drafted} />}
      <RowDrafting
        key={row.address}
        row={row}
        revision={draft?.revision ?? 0}
        draft={await api.draft.load({ form: "protocol.row", subject: row.address })}
      />
    </PageFrame>
  );
}

type SaysProps = { readonly who: string; readonly lines: ReturnType<typeof rowSays> };

/** What the row says in a version, to be held against while it is typed otherwise. */
function Says({ who, lines }: SaysProps): ReactNode {
  const [only, ...more] = lines;
  if (only === undefined) return <p className={styles.words}>{who} has no such row.</p>;
  if (more.length === 0)
    return (
      <p className={styles.words}>
        {who} says: {only.says}.
      </p>
    );
  return (
    <div className={styles.words}>
      <p>{who} says:</p>
      <ul>
        {lines.map(({ word, says }) => (
          <li key={word}>
            {word}: {says}
          </li>
        ))}
      </ul>
    </div>
  );
}
