import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { printDay, printInstant } from "#shared/day/print-day.ts";

export const metadata: Metadata = { title: "Versions of the protocol - Dwellbook" };

/** Every version that the table has had: who drafted it, who approved it, and why. */
export default async function HistoryPage(): Promise<ReactNode> {
  const { api, frame } = await signedIn();
  const { zone, versions } = await api.protocol.history();
  return (
    <PageFrame frame={frame} heading="Which versions has the table had?">
      <DataTable
        caption="Versions, the newest first"
        columns={[
          { head: "Version", cell: ({ version }) => version },
          { head: "Stored", cell: ({ createdAt }) => printInstant(createdAt, zone) },
          { head: "Drafted by", cell: ({ draftedBy }) => draftedBy.join(", ") || "not kept" },
          {
            head: "Approved",
            cell: ({ approvedBy, approvedOn, approvedAlone }) =>
              approvedBy === null || approvedOn === null
                ? "by nobody: EXAMPLE"
                : `by ${approvedBy} on ${printDay(approvedOn)}${approvedAlone ? ", who drafted it too, being the only approver" : ""}`,
          },
          { head: "Why", cell: ({ note }) => note || "not said" },
        ]}
        rows={versions}
        keyOf={({ version }) => String(version)}
        none="The clinic has no table."
      />
      <p data-screen-only>
        <a href="/protocol">The rows in force</a>
      </p>
    </PageFrame>
  );
}
