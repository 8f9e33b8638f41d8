import type { ReactNode } from "react";
import type { TubeState } from "#shared/tube/state.ts";
import { diarySheet } from "#shared/words/diary-sheet.ts";
import { noPaperWords } from "#shared/words/home-paper.ts";
import styles from "./tube.module.css";

/** What can be printed of this tube; what has nothing on it is not offered. */
export function Papers({ tube }: { readonly tube: TubeState }): ReactNode {
  const goesHome = noPaperWords(tube.status) === null;
  const papers = [
    { path: "table-top", word: "Table-top list", has: tube.status === "in" && tube.plannedExchange !== null },
    {
      path: "diary-sheet",
      word: "Output diary for the patient",
      has: diarySheet(tube, "mL").kind === "sheet",
    },
    { path: "review", word: "Review, on one sheet", has: true },
    { path: "card", word: "Tube card for the wallet", has: goesHome },
  ].filter(({ has }) => has);
  if (papers.length === 0) return null;
  return (
    <section className={styles.section} data-screen-only>
      <h2>To print</h2>
      <ul className={styles.papers}>
        {papers.map(({ path, word }) => (
          <li key={path}>
            <a href={`/tubes/${tube.id}/${path}`}>{word}</a>
          </li>
        ))}
      </ul>
    </section>
  );
}
