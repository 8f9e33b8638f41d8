import type { ReactNode } from "react";
import type { TubePage } from "#app/tubes/tube-page.ts";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { catheterWords, immatureWords, tractWords } from "#shared/words/clocks.ts";
import styles from "./tube.module.css";

/** The two clocks in words: one asks when it is changed, the other what it means if it comes out. */
export function Clocks({ view }: { readonly view: TubePage }): ReactNode {
  const { tube, catheterAge, tractAge, row, approved } = view;
  const immature = row.found === "row" ? immatureWords(tractAge, row.row.immatureUnder) : null;
  return (
    <dl className={styles.clocks}>
      <div>
        <dt>Catheter in place</dt>
        <dd>{catheterWords(catheterAge, tube.catheter)}</dd>
      </div>
      <div>
        <dt>Tract</dt>
        <dd>
          {tractWords(tractAge, tube.tract)}
          {immature !== null && (
            <p>
              {immature} {approved === null && <ExampleMark />}
            </p>
          )}
        </dd>
      </div>
    </dl>
  );
}
