import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { DataTable } from "#app/ui/data-table.tsx";
import { keys } from "#app/ui/keys/keys.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";

export const metadata: Metadata = { title: "Keys - Dwellbook" };

export default async function KeysPage(): Promise<ReactNode> {
  const { frame } = await signedIn();
  return (
    <PageFrame frame={frame} heading="Which keys do what?" here="Clinic's books">
      <DataTable
        caption="Keys"
        columns={[
          { head: "Key", cell: ({ key }) => <kbd>{key}</kbd> },
          { head: "Where", cell: ({ where }) => where },
          { head: "What it does", cell: ({ does }) => does },
        ]}
        rows={keys}
        keyOf={({ key, where }) => `${key} ${where}`}
        none="There are no keys."
      />
    </PageFrame>
  );
}
