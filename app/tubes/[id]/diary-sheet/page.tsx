import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import type { Query } from "#app/lists/filter-address.ts";
import { identityOf } from "#app/patients/identity-of.ts";
import { DiarySheet } from "#app/tubes/diary-sheet.tsx";
import { DiaryUnits, unitInQuery } from "#app/tubes/diary-units.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { tubeName } from "#shared/tube/name.ts";
import { diarySheet } from "#shared/words/diary-sheet.ts";

export const metadata: Metadata = { title: "Output diary - Dwellbook" };

type DiaryPageProps = {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<Query>;
};

/** A sheet on which the patient writes down what comes out of one tube: a page to print. */
export default async function DiaryPage({ params, searchParams }: DiaryPageProps): Promise<ReactNode> {
  const { id: tubeId } = await params;
  const unit = unitInQuery(await searchParams);
  const { api, frame } = await signedIn();
  const view = await orNotFound(api.tube.view({ tubeId }));
  const { tube, patient } = view;
  const diary = diarySheet(tube, unit);
  return (
    <PageFrame
      frame={frame}
      heading="What does the patient write down?"
      lede={<a href={`/tubes/${tubeId}`}>All of this tube</a>}
      identity={identityOf(patient, tubeName(tube))}
      paper={diary.kind === "sheet" ? "home" : undefined}
    >
      {diary.kind === "sheet" ? (
        <>
          <DiaryUnits unit={unit} />
          <DiarySheet view={view} diary={diary} unit={unit} />
        </>
      ) : (
        <p>{diary.because}</p>
      )}
    </PageFrame>
  );
}
