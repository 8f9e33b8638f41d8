import type { Metadata } from "next";
import type { ReactNode } from "react";
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
    form: async ({ signed: { api }, view, output }) => (
      <ReadingRecordForm
        patientId={view.patient.id}
        tubeId={tubeId}
        context={{ ...(await api.record.beside()), tube: null, tubes: [], opens: { tubeId: "", number: 0 } }}
        flushOrdered={output.flushOrdered}
        lastSeen={view.lastSeen}
        draft={await api.draft.load({ form: "reading", subject: tubeId })}
        corrects={null}
      />
    ),
  });
}
