import type { ReactNode } from "react";
import type { OutputPage, TubePage } from "#app/tubes/tube-page.ts";
import { beforeShutting } from "#shared/review/before-shutting.ts";
import { shuttingSentence } from "#shared/words/before-shutting.ts";
import styles from "./before-shutting.module.css";

type BeforeShuttingProps = { readonly view: TubePage; readonly output: OutputPage };

/** What is said before a tube is shut: it warns, and blocks nobody. */
export function BeforeShutting({ view: { tube, conditions }, output }: BeforeShuttingProps): ReactNode {
  const readings = output.readings.map(({ reading }) => reading);
  const doubts = beforeShutting({ tube, conditions, readings });
  if (doubts.length === 0) return null;
  return (
    <ul className={styles.doubts}>
      {doubts.map((doubt) => (
        <li key={doubt.code} data-grave={doubt.grave || undefined}>
          {shuttingSentence(doubt, output.zone)}
        </li>
      ))}
    </ul>
  );
}
