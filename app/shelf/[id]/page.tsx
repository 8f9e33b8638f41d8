import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { ShelfRecordForm } from "#app/shelf/shelf-record-form.tsx";
import { Shelve } from "#app/shelf/shelve.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";

export const metadata: Metadata = { title: "Change the shelf - Dwellbook" };

type TypePageProps = { readonly params: Promise<{ readonly id: string }> };

/** One type: what is said of it, and whether it is on the shelf. */
export default async function TypePage({ params }: TypePageProps): Promise<ReactNode> {
  const { id } = await params;
  const { api, frame, person } = await signedIn();
  const { types, off } = await api.shelf.view();
  const found = [...types, ...off].find((type) => type.id === id);
  if (found === undefined) notFound();
  const { inUse, updatedAt, ...type } = found;
  return (
    <PageFrame
      frame={frame}
      heading="What is said of it?"
      lede={<bdi>{type.name}</bdi>}
      here="Clinic's books"
    >
      {may(person, "shelf.changed") ? (
        <>
          <ShelfRecordForm
            shelf={types}
            draft={await api.draft.load({ form: "shelf.changed", subject: id })}
            changes={{ type, lastUpdatedAt: updatedAt }}
          />
          <Shelve typeId={id} lastUpdatedAt={updatedAt} inUse={inUse} />
        </>
      ) : (
        <NotForYou back="/shelf" />
      )}
    </PageFrame>
  );
}
