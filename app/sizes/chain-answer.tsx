import type { ReactNode } from "react";
import { AnswerLine, Grounds } from "#app/bore/answer-line.tsx";
import { BoreDrawing } from "#app/bore/bore-drawing.tsx";
import { boreProfile } from "#shared/fit/bore-profile.ts";
import type { Chain, Pair } from "#shared/fit/chain.ts";
import { chainLines, namedIn, pairLines, pairWords, thingWords } from "#shared/words/chain.ts";
import styles from "./sizes.module.css";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

type LinesProps = {
  readonly says: { readonly bySize: string; readonly byLength: string };
  readonly of: { readonly bySize: Pair["bySize"]["verdict"]; readonly byLength: Pair["byLength"]["verdict"] };
};

/** By size and by length, in two lines that do not hide one another. Only what stops, or may, is in the accent. */
function Lines({ says, of }: LinesProps): ReactNode {
  const stops = of.bySize === "does not pass" || of.bySize === "doubt";
  const isShort = of.byLength === "too short" || of.byLength === "doubt";
  return (
    <>
      <AnswerLine now={stops}>{says.bySize}</AnswerLine>
      <AnswerLine now={isShort}>{says.byLength}</AnswerLine>
    </>
  );
}

/** One thing in the next. Stands between the two, where there are two. */
export function PairAnswer({ pair }: { readonly pair: Pair | undefined }): ReactNode {
  if (pair === undefined) return null;
  return (
    <div className={styles.pair}>
      <h3>{capital(pairWords(pair))}</h3>
      <Lines says={pairLines(pair)} of={{ bySize: pair.bySize.verdict, byLength: pair.byLength.verdict }} />
      <Grounds bySize={pair.bySize} named={namedIn(pair)} />
    </div>
  );
}

/** The whole chain in two lines, with the drawing of the pair that decides. */
export function ChainAnswer({ chain }: { readonly chain: Chain }): ReactNode {
  const says = chainLines(chain);
  const { bySize, byLength } = chain;
  if (says === null || bySize === null || byLength === null)
    return <p>One thing alone: add what it goes through.</p>;
  const { passage, outer } = bySize.first;
  return (
    <>
      <output className={styles.summary}>
        <Lines says={says} of={{ bySize: bySize.verdict, byLength: byLength.verdict }} />
      </output>
      <BoreDrawing
        of={capital(thingWords(outer))}
        goes={namedIn(bySize.first)}
        profile={boreProfile(passage, outer.outside)}
      />
    </>
  );
}
