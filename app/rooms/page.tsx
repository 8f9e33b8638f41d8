import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { LinkLine } from "#app/record/act-links.tsx";
import { roomColumns } from "#app/rooms/room-columns.tsx";
import styles from "#app/rooms/rooms.module.css";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";

export const metadata: Metadata = { title: "Rooms - Dwellbook" };

/** The clinic's rooms in its own order: what each can do, when it is staffed, what stays free for what is urgent. */
export default async function RoomsPage(): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  const { version, rooms } = await api.rooms.view();
  const mayChange = may(person, "rooms.change");
  return (
    <PageFrame here="Clinic's books" frame={frame} heading="Which rooms does the clinic have?">
      {mayChange && <LinkLine label="What to change" links={[{ href: "/rooms/new", word: "Add a room" }]} />}
      <div className={styles.table}>
        <DataTable
          caption="Rooms"
          columns={mayChange ? roomColumns.withActs : roomColumns.plain}
          rows={rooms}
          keyOf={({ id }) => id}
          none={`No room ${version === 0 ? "yet" : "any more"}: no slot can be found for a visit until the lead adds one.`}
        />
      </div>
      {version > 0 && (
        <p className={styles.table} data-screen-only>
          Version {version}. <a href="/rooms/history">Who changed the rooms, and when</a>
        </p>
      )}
    </PageFrame>
  );
}
