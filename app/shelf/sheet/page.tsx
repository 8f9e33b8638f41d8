import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { SheetForm } from "#app/shelf/sheet-form.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { columnLabel, shelfColumns } from "#shared/shelf/shelf-columns.ts";

export const metadata: Metadata = { title: "A sheet for the shelf - Dwellbook" };

/** The clinic's own sheet of types: read, shown row by row, brought onto the shelf in one act. */
export default async function SheetPage(): Promise<ReactNode> {
  const { frame, person } = await signedIn();
  return (
    <PageFrame frame={frame} heading="Which sheet fills the shelf?" here="Clinic's books">
      {may(person, "shelf.broughtIn") ? (
        <SheetForm headings={shelfColumns.map(columnLabel)} />
      ) : (
        <NotForYou back="/shelf" />
      )}
    </PageFrame>
  );
}
