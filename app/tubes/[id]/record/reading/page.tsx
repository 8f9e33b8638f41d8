import type { Metadata } from "next";
import type { ReactNode } from "react";
import { readingContext } from "#app/output/reading-context.ts";
import { readingPage } from "#app/output/reading-page.tsx";
import { ReadingRecordForm } from "#app/output/reading-record-form.tsx";

export const metadata: Metadata = { title: "Log an emptying - Dwellbook" };

type LogPageProps = { readonly params: Promise<{ readonly id: string }> };

/** One emptying, as it is told on the telephone or read from a chart. */
export default async function LogPage({ params }: LogPageProps): Promise<ReactNode> {
  const { id: tubeId } = await params;
  return readingPage({
    tubeId,
    heading: "What was emptied, and when?",
    procedure: "reading.recorded",
    form: async (open) => (
      <ReadingRecordForm
        patientId={open.view.patient.id}
        tubeId={tubeId}
        context={await readingContext(open, null)}
        flushOrdered={open.output.flushOrdered}
        lastSeen={open.view.lastSeen}
        draft={await open.signed.api.draft.load({ form: "reading", subject: tubeId })}
        corrects={null}
      />
    ),
  });
}
