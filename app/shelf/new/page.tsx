import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { ShelfRecordForm } from "#app/shelf/shelf-record-form.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";

export const metadata: Metadata = { title: "Add to the shelf - Dwellbook" };

/** One more type on the clinic's shelf. */
export default async function NewTypePage(): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  return (
    <PageFrame frame={frame} heading="What is added to the shelf?" here="Clinic's books">
      {may(person, "shelf.added") ? (
        <ShelfRecordForm
          shelf={(await api.shelf.view()).types}
          draft={await api.draft.load({ form: "shelf.added", subject: "" })}
          changes={null}
        />
      ) : (
        <NotForYou back="/shelf" />
      )}
    </PageFrame>
  );
}
