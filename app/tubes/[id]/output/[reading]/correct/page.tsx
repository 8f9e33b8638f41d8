import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { ReactNode } from "react";
import { readingContext } from "#app/output/reading-context.ts";
import { readingPage } from "#app/output/reading-page.tsx";
import { ReadingRecordForm } from "#app/output/reading-record-form.tsx";
import { readingTexts } from "#shared/record/output/reading-texts.ts";

export const metadata: Metadata = { title: "Correct a reading - Dwellbook" };

type CorrectPageProps = { readonly params: Promise<{ readonly id: string; readonly reading: string }> };

/** A reading's own form, open with what it says now. */
export default async function CorrectReadingPage({ params }: CorrectPageProps): Promise<ReactNode> {
  const { id: tubeId, reading: readingId } = await params;
  return readingPage({
    tubeId,
    heading: "What should this reading have said?",
    procedure: "reading.corrected",
    form: async (open) => {
      const { signed, view, output } = open;
      const found = output.readings.find(({ reading }) => reading.id === readingId);
      if (found === undefined) notFound();
      return (
        <ReadingRecordForm
          patientId={view.patient.id}
          tubeId={tubeId}
          context={await readingContext(open, readingId)}
          flushOrdered={output.flushOrdered}
          lastSeen={view.lastSeen}
          draft={await signed.api.draft.load({ form: "reading.corrected", subject: readingId })}
          corrects={{ readingId, texts: readingTexts(found.reading, output.zone) }}
        />
      );
    },
  });
}
