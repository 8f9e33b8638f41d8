import type { Metadata } from "next";
import type { ReactNode } from "react";
import { ChangingPage } from "#app/record/changing-page.tsx";
import { RoomRecordForm } from "#app/rooms/room-record-form.tsx";
import { NoLongerThere, roomsBook } from "#app/rooms/rooms-page.tsx";

export const metadata: Metadata = { title: "Change a room - Dwellbook" };

type RoomPageProps = { readonly params: Promise<{ readonly id: string }> };

/** One room: its name, what it can do, when it is staffed, what stays free. */
export default async function RoomPage({ params }: RoomPageProps): Promise<ReactNode> {
  const { id } = await params;
  return (
    <ChangingPage
      book={roomsBook}
      heading="What is changed of the room?"
      content={async (api) => {
        const { version, rooms } = await api.rooms.view();
        const changes = rooms.find((room) => room.id === id);
        if (changes === undefined) return <NoLongerThere />;
        const of = { form: "rooms.change", subject: id };
        const kept = { ...of, draft: await api.draft.load(of) };
        return <RoomRecordForm rooms={rooms} seen={version} changes={changes} kept={kept} />;
      }}
    />
  );
}
