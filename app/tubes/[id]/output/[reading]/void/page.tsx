import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { ReactNode } from "react";
import { readingPage } from "#app/output/reading-page.tsx";
import { VoidReadingForm } from "#app/output/void-reading-form.tsx";

export const metadata: Metadata = { title: "Void a reading - Dwellbook" };

type VoidPageProps = { readonly params: Promise<{ readonly id: string; readonly reading: string }> };

/** Why a reading does not count. It stays in the log. */
export default async function VoidReadingPage({ params }: VoidPageProps): Promise<ReactNode> {
  const { id: tubeId, reading: readingId } = await params;
  return readingPage({
    tubeId,
    heading: "Why does this reading not count?",
    procedure: "reading.voided",
    form: async ({ signed: { api }, view, output }) => {
      if (output.readings.every(({ reading }) => reading.id !== readingId)) notFound();
      return (
        <VoidReadingForm
          patientId={view.patient.id}
          tubeId={tubeId}
          readingId={readingId}
          lastSeen={view.lastSeen}
          draft={await api.draft.load({ form: "reading.voided", subject: readingId })}
        />
      );
    },
  });
}
