import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import styles from "#app/export/export.module.css";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { exportPartNames, exportParts } from "#shared/words/exports.ts";

export const metadata: Metadata = { title: "Export - Dwellbook" };

/** Everything that this clinic has recorded, as files to take away. */
export default async function ExportPage(): Promise<ReactNode> {
  const { frame, person } = await signedIn();
  if (!may(person, "export.file"))
    return (
      <PageFrame here="Clinic's books" frame={frame} heading="Which file is needed?">
        <NotForYou back="/" />
      </PageFrame>
    );
  return (
    <PageFrame here="Clinic's books" frame={frame} heading="Which file is needed?">
      <div className={styles.content}>
        <p>
          Each file holds names, birth dates and diagnoses: keep it as the clinic keeps its charts. Who took
          which file and when is written down under <a href="/audit">who saw and did what</a>.
        </p>
        <DataTable
          caption="Files"
          columns={[
            { head: "File", cell: (part) => <a href={`/api/export/${part}`}>{part}</a> },
            { head: "Holds", cell: (part) => exportParts[part] },
          ]}
          rows={exportPartNames}
          keyOf={(part) => part}
          none="There is no file."
        />
        <p>
          All of them at once, on the server: <code>npm run export -- FOLDER</code>
        </p>
      </div>
    </PageFrame>
  );
}
