import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { VersionsTable } from "#app/record/versions-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { roomsChangeWords } from "#shared/words/rooms.ts";

export const metadata: Metadata = { title: "Versions of the rooms - Dwellbook" };

/** Every version that the rooms have had: what was added, changed and taken away, when, and by whom. */
export default async function HistoryPage(): Promise<ReactNode> {
  const { api, frame } = await signedIn();
  const { zone, versions } = await api.rooms.history();
  return (
    <PageFrame
      here="Clinic's books"
      frame={frame}
      heading="Who changed the rooms, and when?"
      lede={<a href="/rooms">The rooms that the clinic has</a>}
    >
      <VersionsTable
        versions={versions}
        zone={zone}
        words={roomsChangeWords}
        first="no room yet"
        none="The clinic has not had a room yet."
      />
    </PageFrame>
  );
}
