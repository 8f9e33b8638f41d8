import type { Metadata } from "next";
import type { ReactNode } from "react";
import { type SignedIn, signedIn } from "#app/_trpc/server.ts";
import styles from "#app/audit/audit.module.css";
import { fullNameOf } from "#app/patients/identity-of.ts";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { printInstant } from "#shared/day/print-day.ts";

export const metadata: Metadata = { title: "Who saw and did what - Dwellbook" };

/** The newest looks and acts of everybody here. */
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
            { head: "Whom", cell: ({ concerned }) => <Whom concerned={concerned} /> },
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
            {
              head: "What",
              cell: ({ subjectKind, subjectId, concerned }) =>
                concerned === null ? `${subjectKind}: ${subjectId}` : <Whom concerned={concerned} />,
            },
          ]}
          rows={reads.map((read, index) => ({ ...read, index }))}
          keyOf={({ index }) => String(index)}
          none="Nobody has looked at anything yet."
        />
      </div>
    </PageFrame>
  );
}

type Concerned = Awaited<ReturnType<SignedIn["api"]["list"]["whoSawWhat"]>>["acts"][number]["concerned"];

/** The patient by name, and the tube where it was one. */
function Whom({ concerned }: { readonly concerned: Concerned }): ReactNode {
  if (concerned === null) return "";
  const { patientId, tube } = concerned;
  return (
    <>
      <a href={`/patients/${patientId}`}>
        <bdi>{fullNameOf(concerned)}</bdi>
      </a>
      {tube !== null && (
        <>
          , <a href={`/tubes/${tube.id}`}>{tube.name}</a>
        </>
      )}
    </>
  );
}
