import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { Upload } from "#app/import/upload.tsx";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { printInstant } from "#shared/day/print-day.ts";
import styles from "./import.module.css";

export const metadata: Metadata = { title: "Bring in a list - Dwellbook" };

const HEADING = "Which list is brought in?";

/** The clinic's own list of tubes: bring one, go on with one that waits, take back one that was brought in. */
export default async function ImportPage(): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  if (!may(person, "sheet.list"))
    return (
      <PageFrame here="Clinic's books" frame={frame} heading={HEADING}>
        <NotForYou back="/" />
      </PageFrame>
    );
  const { zone, waiting, broughtIn } = await api.sheet.list();
  return (
    <PageFrame here="Clinic's books" frame={frame} heading={HEADING}>
      <Upload />
      <div className={styles.tables}>
        {waiting.length > 0 && (
          <DataTable
            caption="Lists read here, kept for 7 days"
            columns={[
              {
                head: "List",
                cell: ({ id, fileName }) => (
                  <a href={`/import/${id}`}>
                    <bdi>{fileName}</bdi>
                  </a>
                ),
              },
              { head: "Last looked into", cell: ({ touchedAt }) => printInstant(touchedAt, zone) },
            ]}
            rows={waiting}
            keyOf={({ id }) => id}
            none="No list waits."
          />
        )}
        <DataTable
          caption="Brought in"
          columns={[
            { head: "List", cell: ({ fileName }) => <bdi>{fileName}</bdi> },
            { head: "When", cell: ({ at }) => printInstant(at, zone) },
            { head: "By", cell: ({ who }) => <bdi>{who}</bdi> },
            { head: "Rows", cell: ({ rowsInSheet }) => rowsInSheet, figure: true },
            { head: "Tubes", cell: ({ tubes }) => tubes, figure: true },
            {
              head: "Take back",
              cell: ({ actId, standing }) =>
                standing === 0 ? "taken back" : <a href={`/import/undo/${actId}`}>Take it back</a>,
            },
          ]}
          rows={broughtIn}
          keyOf={({ actId }) => actId}
          none="No list has been brought in yet."
        />
      </div>
    </PageFrame>
  );
}
