import type { ReactNode } from "react";
import { ClinicNumber } from "#app/tubes/clinic-number.tsx";
import { DiaryHelp } from "#app/tubes/diary-help.tsx";
import { HomeIdentity } from "#app/tubes/home-identity.tsx";
import type { TubePage } from "#app/tubes/tube-page.ts";
import { printDay } from "#shared/day/print-day.ts";
import { titlesOf } from "#shared/tube/name.ts";
import { type Diary, type DiaryUnit, SHEET_ROWS } from "#shared/words/diary-sheet.ts";
import styles from "./diary-sheet.module.css";
import paper from "./home-paper.module.css";

type DiarySheetProps = {
  readonly view: TubePage;
  readonly diary: Extract<Diary, { kind: "sheet" }>;
  readonly unit: DiaryUnit;
};

const lines = Array.from({ length: SHEET_ROWS }, (_, index) => index + 1);

/** The sheet itself: whose and of which tube, how to measure, empty lines, and on its back when to call whom. */
export function DiarySheet({ view, diary, unit }: DiarySheetProps): ReactNode {
  const { tube, others, patient, today } = view;
  return (
    <article className={styles.sheet}>
      <header>
        <div className={styles.opening}>
          <h2 className={styles.title}>Output diary</h2>
          <p>Printed {printDay(today)}</p>
        </div>
        <HomeIdentity patient={patient} />
        <p>
          <bdi className={paper.strong}>{titlesOf([tube, ...others]).get(tube.id)}</bdi>. You may call it:{" "}
          {diary.called}.
        </p>
        <ClinicNumber clinic={view.takeHome.clinic} />
      </header>
      <ul className={styles.howTo}>
        {diary.howTo.map((line) => (
          <li key={line}>
            <bdi>{line}</bdi>
          </li>
        ))}
      </ul>
      <p>
        Emptied last before the first line: date <span className={`${paper.blank} ${paper.short}`} /> time{" "}
        <span className={`${paper.blank} ${paper.short}`} />
      </p>
      <table className={styles.lines}>
        <thead>
          <tr>
            {diary.columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line}>
              {diary.columns.map((column) => (
                <td key={column} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <DiaryHelp view={view} unit={unit} />
    </article>
  );
}
