import type { Metadata } from "next";
import type { ReactNode } from "react";
import { ChangingPage } from "#app/record/changing-page.tsx";
import { roomColumns } from "#app/rooms/room-columns.tsx";
import { NoLongerThere, roomsBook } from "#app/rooms/rooms-page.tsx";
import { TakeAway } from "#app/rooms/take-away.tsx";
import { DataTable } from "#app/ui/data-table.tsx";

export const metadata: Metadata = { title: "Take a room away - Dwellbook" };

type TakeAwayPageProps = { readonly params: Promise<{ readonly id: string }> };

/** Take a room out of those that the clinic has. */
export default async function TakeAwayPage({ params }: TakeAwayPageProps): Promise<ReactNode> {
  const { id } = await params;
  return (
    <ChangingPage
      book={roomsBook}
      heading="Does the clinic have this room no longer?"
      content={async (api) => {
        const { version, rooms } = await api.rooms.view();
        const room = rooms.find((one) => one.id === id);
        if (room === undefined) return <NoLongerThere />;
        return (
          <>
            <DataTable
              caption="The room that would go"
              columns={roomColumns.plain}
              rows={[room]}
              keyOf={(one) => one.id}
              none=""
            />
            <TakeAway roomId={id} seen={version} />
          </>
        );
      }}
    />
  );
}
