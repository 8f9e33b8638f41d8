import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { HospitalListForm } from "#app/visits/hospital-list/hospital-list-form.tsx";
import { may } from "#shared/access/may.ts";
import { bookingFields, bookingLabel, noAnswers } from "#shared/visit/hospital-list/columns.ts";

export const metadata: Metadata = { title: "The hospital's bookings - Dwellbook" };

/** A list of what the hospital booked itself: read, matched to tubes row by row, brought in by one act. */
export default async function HospitalListPage(): Promise<ReactNode> {
  const { frame, person } = await signedIn();
  return (
    <PageFrame frame={frame} heading="What has the hospital booked?" here="Clinic's books">
      {may(person, "visit.hospitalBrought") ? (
        <HospitalListForm headings={bookingFields.map(bookingLabel)} unanswered={noAnswers} />
      ) : (
        <NotForYou back="/lists" />
      )}
    </PageFrame>
  );
}
