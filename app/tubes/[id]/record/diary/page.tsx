import type { Metadata } from "next";
import type { ReactNode } from "react";
import { DiaryRecordForm } from "#app/output/diary-record-form.tsx";
import { readingContext } from "#app/output/reading-context.ts";
import { readingPage } from "#app/output/reading-page.tsx";

export const metadata: Metadata = { title: "Log a diary - Dwellbook" };

type DiaryPageProps = { readonly params: Promise<{ readonly id: string }> };

/** Several emptyings at once, as they are read out on the telephone, stand on a sheet or come in a message. */
export default async function DiaryPage({ params }: DiaryPageProps): Promise<ReactNode> {
  const { id: tubeId } = await params;
  return readingPage({
    tubeId,
    heading: "What does the diary say?",
    procedure: "reading.diary",
    form: async (open) => (
      <DiaryRecordForm
        patientId={open.view.patient.id}
        tubeId={tubeId}
        context={await readingContext(open, null)}
        flushOrdered={open.output.flushOrdered}
        lastSeen={open.view.lastSeen}
        draft={await open.signed.api.draft.load({ form: "diary", subject: tubeId })}
      />
    ),
  });
}
