import type { ReactNode } from "react";
import { EachOfOurs } from "#app/bore/each-of-ours.tsx";
import type { Pair } from "#shared/fit/chain.ts";
import type { PassageRows } from "#shared/fit/passage.ts";
import { namesThatPass, whichPass } from "#shared/fit/which-pass.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import { namedIn, sortNouns, thingWords } from "#shared/words/chain.ts";
import styles from "./sizes.module.css";

type WhichOfOursProps = {
  /** The innermost thing in the next. */
  readonly pair: Pair;
  readonly shelf: readonly ShelfType[];
  readonly rows: PassageRows;
};

/** Which of ours pass where the innermost thing goes: the shelf's types of its sort. Nothing where the shelf has none. */
export function WhichOfOurs({ pair, shelf, rows }: WhichOfOursProps): ReactNode {
  const { inner, outer } = pair;
  const types = shelf.filter(({ sort }) => sort === inner.sort);
  if (types.length === 0) return null;
  const ours = whichPass(types, [outer.inside], rows);
  const passing = namesThatPass(ours);
  const those = `Of the ${sortNouns[inner.sort]}s on the shelf`;
  return (
    <section className={styles.ours} aria-labelledby="which-of-ours">
      <h3 id="which-of-ours">Which of ours pass?</h3>
      <p>
        {passing.length === 0
          ? `${those} none is known to pass ${thingWords(outer)} by size.`
          : `${those} these pass ${thingWords(outer)} by size, their length apart: ${passing.join("; ")}.`}
      </p>
      <EachOfOurs
        heading={`Each ${sortNouns[inner.sort]} of the shelf, with the reason`}
        ours={ours}
        named={namedIn(pair)}
      />
    </section>
  );
}
