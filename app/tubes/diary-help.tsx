import type { ReactNode } from "react";
import { ClinicNumber } from "#app/tubes/clinic-number.tsx";
import { HomeFlagsTable } from "#app/tubes/home-flags-table.tsx";
import { HomeIdentity } from "#app/tubes/home-identity.tsx";
import type { TubePage } from "#app/tubes/tube-page.ts";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { type DiaryUnit, diaryCautions } from "#shared/words/diary-sheet.ts";
import { homeFlags } from "#shared/words/home-flags.ts";
import { emergencyCaution, listNotes, onCallRoute, speaksOfThisAge } from "#shared/words/home-paper.ts";
import styles from "./diary-sheet.module.css";
import paper from "./home-paper.module.css";

type DiaryHelpProps = { readonly view: TubePage; readonly unit: DiaryUnit };

/** When to call whom about this tube, by the clinic's list, and what holds until somebody is reached. */
export function DiaryHelp({ view, unit }: DiaryHelpProps): ReactNode {
  const { tube, patient, takeHome, row } = view;
  const { approved, redFlags, output, clinic } = takeHome;
  const notes = listNotes({ approved, found: row.found, birthKnown: patient.birthOn !== null });
  const levels = speaksOfThisAge(row) ? homeFlags(redFlags, { tube, output, unit }) : [];
  return (
    <section className={styles.help}>
      <h2 className={styles.title}>When to call, and whom</h2>
      <HomeIdentity patient={patient} />
      <ClinicNumber clinic={clinic} />
      <p>
        {onCallRoute} <span className={paper.blank} />
      </p>
      <p>
        {emergencyCaution} {approved === null && <ExampleMark />} {notes.join(" ")}
      </p>
      {levels.length > 0 && <HomeFlagsTable levels={levels} />}
      <div className={styles.cautions}>
        {diaryCautions.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    </section>
  );
}
