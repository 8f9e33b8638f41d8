import type { Metadata } from "next";
import type { ReactNode } from "react";
import { ChangingPage } from "#app/record/changing-page.tsx";
import { RoomRecordForm } from "#app/rooms/room-record-form.tsx";
import { roomsBook } from "#app/rooms/rooms-page.tsx";

export const metadata: Metadata = { title: "Add a room - Dwellbook" };

/** One more room of the clinic. */
export default function NewRoomPage(): ReactNode {
  return (
    <ChangingPage
      book={roomsBook}
      heading="Which room is added?"
      content={async (api) => {
        const { version, rooms } = await api.rooms.view();
        const of = { form: "rooms.add", subject: "" };
        const kept = { ...of, draft: await api.draft.load(of) };
        return <RoomRecordForm rooms={rooms} seen={version} changes={null} kept={kept} />;
      }}
    />
  );
}
