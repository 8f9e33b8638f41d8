import type { Metadata } from "next";
import type { ReactNode } from "react";
import { type SignedIn, signedIn } from "#app/_trpc/server.ts";
import styles from "#app/audit/audit.module.css";
import { listHref, type Query } from "#app/lists/filter-address.ts";
import { pageInQuery } from "#app/lists/page-address.ts";
import { Pages } from "#app/lists/pages.tsx";
import { fullNameOf } from "#app/patients/identity-of.ts";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { printInstant } from "#shared/day/print-day.ts";

export const metadata: Metadata = { title: "Who saw and did what - Dwellbook" };

/** Looks and acts of everybody here, the newest first, each paged by itself. */
export default async function AuditPage({
  searchParams,
}: {
  readonly searchParams: Promise<Query>;
}): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  if (!may(person, "list.whoSawWhat"))
    return (
      <PageFrame here="Clinic's books" frame={frame} heading="Who saw and did what?">
        <NotForYou back="/" />
      </PageFrame>
    );
  const query = await searchParams;
  const asked = { done: pageInQuery(query, "done"), seen: pageInQuery(query, "seen") };
  const { zone, reads, acts } = await api.list.whoSawWhat(asked);
  const hrefOf = (pages: Partial<typeof asked>): string => {
    const { done, seen } = { ...asked, ...pages };
    return listHref("/audit", {}, { done: String(done), seen: String(seen) });
  };
  return (
    <PageFrame here="Clinic's books" frame={frame} heading="Who saw and did what?" lede="The newest first">
      <div className={styles.columns}>
        <div>
          <DataTable
            caption="Done"
            columns={[
              {
                head: "When",
                cell: ({ at }) => <span className={styles.when}>{printInstant(at, zone)}</span>,
              },
              { head: "Who", cell: ({ who }) => who },
              { head: "What", cell: ({ command }) => command },
              { head: "Whom", cell: ({ concerned }) => <Whom concerned={concerned} /> },
            ]}
            rows={acts.rows}
            keyOf={({ actId }) => actId}
            none={acts.page === 1 ? "Nothing has been recorded yet." : "Nothing was recorded before these."}
          />
          <Pages of="what was done" {...acts} hrefOf={(done) => hrefOf({ done })} />
        </div>
        <div>
          <DataTable
            caption="Seen"
            columns={[
              {
                head: "When",
                cell: ({ at }) => <span className={styles.when}>{printInstant(at, zone)}</span>,
              },
              { head: "Who", cell: ({ who }) => who },
              {
                head: "What",
                cell: ({ subjectKind, subjectId, concerned }) =>
                  concerned === null ? `${subjectKind}: ${subjectId}` : <Whom concerned={concerned} />,
              },
            ]}
            rows={reads.rows.map((read, index) => ({ ...read, index }))}
            keyOf={({ index }) => String(index)}
            none={
              reads.page === 1 ? "Nobody has looked at anything yet." : "Nothing was looked at before these."
            }
          />
          <Pages of="what was seen" {...reads} hrefOf={(seen) => hrefOf({ seen })} />
        </div>
      </div>
    </PageFrame>
  );
}

type Concerned = Awaited<
  ReturnType<SignedIn["api"]["list"]["whoSawWhat"]>
>["acts"]["rows"][number]["concerned"];

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
