import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { ShelfTable } from "#app/shelf/shelf-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import styles from "./shelf.module.css";

export const metadata: Metadata = { title: "Shelf - Dwellbook" };

/** The clinic's own list of what it has ready, as types: wires first, each sort by size. */
export default async function ShelfPage(): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  const { types, off } = await api.shelf.view();
  const mayChange = may(person, "shelf.changed");
  return (
    <PageFrame frame={frame} heading="What is on the shelf?" here="Clinic's books">
      {mayChange && (
        <p className={styles.links} data-screen-only>
          <a href="/shelf/new">Add a type</a>
          <a href="/shelf/sheet">From a sheet</a>
        </p>
      )}
      <ShelfTable
        caption="On the shelf"
        types={types}
        mayChange={mayChange}
        none="Nothing is on the shelf yet. With its types here, a tube that is recorded by name has its insides known, and a planned exchange says which wires of the clinic pass."
      />
      {off.length > 0 && (
        <details className={styles.off} data-screen-only>
          <summary>Taken off the shelf: {off.length}</summary>
          <ShelfTable caption="Taken off" types={off} mayChange={mayChange} none="" />
        </details>
      )}
    </PageFrame>
  );
}
