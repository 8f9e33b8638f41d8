import type { ReactNode } from "react";
import type { TubePage } from "#app/tubes/tube-page.ts";
import { WhenToCall } from "#app/tubes/when-to-call.tsx";
import { type DiaryUnit, diaryCautions } from "#shared/words/diary-sheet.ts";
import { homeFlags } from "#shared/words/home-flags.ts";
import { listNotes, speaksOfThisAge } from "#shared/words/home-paper.ts";

type DiaryHelpProps = { readonly view: TubePage; readonly unit: DiaryUnit };

/** When to call whom about this tube, by the clinic's list. */
export function DiaryHelp({ view, unit }: DiaryHelpProps): ReactNode {
  const { tube, patient, takeHome, row } = view;
  const { approved, redFlags, output } = takeHome;
  const notes = listNotes({ approved, found: row.found, birthKnown: patient.birthOn !== null });
  const levels = speaksOfThisAge(row) ? homeFlags(redFlags, { tube, output, unit }) : [];
  return <WhenToCall {...{ patient, takeHome, notes, levels }} cautions={diaryCautions} />;
}
