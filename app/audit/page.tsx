import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import styles from "#app/audit/audit.module.css";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { printInstant } from "#shared/day/print-day.ts";

export const metadata: Metadata = { title: "Who saw and did what - Dwellbook" };

/** The newest looks and acts. Ids stand where names of patients would: who may see them follows the link. */
export default async function AuditPage(): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  if (!may(person, "list.whoSawWhat"))
    return (
      <PageFrame frame={frame} heading="Who saw and did what?">
        <NotForYou back="/" />
      </PageFrame>
    );
  const { zone, reads, acts } = await api.list.whoSawWhat();
  return (
    <PageFrame frame={frame} heading="Who saw and did what?" lede="The newest first">
      <div className={styles.columns}>
        <DataTable
          caption="Done"
          columns={[
            { head: "When", cell: ({ at }) => <span className={styles.when}>{printInstant(at, zone)}</span> },
            { head: "Who", cell: ({ who }) => who },
            { head: "What", cell: ({ command }) => command },
          ]}
          rows={acts}
          keyOf={({ actId }) => actId}
          none="Nothing has been recorded yet."
        />
        <DataTable
          caption="Seen"
          columns={[
            { head: "When", cell: ({ at }) => <span className={styles.when}>{printInstant(at, zone)}</span> },
            { head: "Who", cell: ({ who }) => who },
            { head: "What", cell: (read) => <Seen read={read} /> },
          ]}
          rows={reads.map((read, index) => ({ ...read, index }))}
          keyOf={({ index }) => String(index)}
          none="Nobody has looked at anything yet."
        />
      </div>
    </PageFrame>
  );
}

const places: Readonly<Record<string, string>> = { patient: "/patients/", tube: "/tubes/" };

type SeenProps = { readonly read: { readonly subjectKind: string; readonly subjectId: string } };

/** A patient or tube leads to its page; a list stands by its name. */
function Seen({ read: { subjectKind, subjectId } }: SeenProps): ReactNode {
  const place = places[subjectKind];
  if (place === undefined) return `${subjectKind}: ${subjectId}`;
  return (
    <>
      {subjectKind} <a href={`${place}${subjectId}`}>{subjectId}</a>
    </>
  );
}
