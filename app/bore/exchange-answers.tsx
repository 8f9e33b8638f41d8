import type { ReactNode } from "react";
import { AnswerLine, Grounds } from "#app/bore/answer-line.tsx";
import { BoreDrawing } from "#app/bore/bore-drawing.tsx";
import { ShelfWires } from "#app/bore/shelf-wires.tsx";
import { boreProfile } from "#shared/fit/bore-profile.ts";
import type { Pair } from "#shared/fit/chain.ts";
import type { ExchangeAnswer } from "#shared/fit/exchange-plan.ts";
import { type Fact, known } from "#shared/tube/certainty.ts";
import { namedIn } from "#shared/words/chain.ts";
import {
  bleedingLine,
  dilatorLine,
  lengthLine,
  readyLines,
  releaseLines,
  stepLine,
  tractLine,
} from "#shared/words/exchange-plan.ts";
import { sizeLine, stateLine } from "#shared/words/passage.ts";
import styles from "./passage.module.css";

type AnswersProps = {
  readonly answer: ExchangeAnswer;
  /** On paper what is drawn is left out, and every ground stands open. */
  readonly paper?: boolean;
};

/** A planned exchange in eight answers, each under its question; what needs someone is in the accent. */
export function ExchangeAnswers({ answer, paper = false }: AnswersProps): ReactNode {
  const { throughOld, throughNew, throughSheath, length, step, dilators, tract, ready } = answer;
  const dilating = dilatorLine(dilators);
  return (
    <div className={styles.answers}>
      <Answer asks="Wire through the tube in place">
        <PairLine pair={throughOld.pair} paper={paper} />
        <AnswerLine now={throughOld.byState.state === "in doubt"}>{stateLine(throughOld.byState)}</AnswerLine>
      </Answer>
      <Answer asks="Wire through the tube to come">
        {throughNew.pairs.map((pair) => (
          <PairLine key={pair.outer.sort} pair={pair} paper={paper} named={throughNew.pairs.length > 1} />
        ))}
      </Answer>
      <Answer asks="Length of the wire">
        <AnswerLine now={length.verdict !== "long enough" && length.verdict !== "cannot tell"}>
          {lengthLine(length)}
        </AnswerLine>
      </Answer>
      <Answer asks="Step">
        <AnswerLine now={step.verdict === "over the step with a note"}>{stepLine(step)}</AnswerLine>
        {dilating !== null && <AnswerLine>Dilators. {dilating}</AnswerLine>}
      </Answer>
      <Answer asks="Tract">
        <AnswerLine now={tract.maturity === "immature"}>{tractLine(tract)}</AnswerLine>
        {tract.asks !== null && <AnswerLine>Question of the row: {tract.asks}</AnswerLine>}
        {tract.bleeding.length > 0 && (
          <details className={styles.grounds} open={paper}>
            <summary>Bleeding risk, both classes, for discussion</summary>
            <ul>
              {tract.bleeding.map((row) => (
                <li key={row.class}>{bleedingLine(row)}</li>
              ))}
            </ul>
          </details>
        )}
      </Answer>
      {throughSheath?.pairs.map((pair) => (
        <Answer key="sheath" asks="Tube to come through the sheath">
          <PairLine pair={pair} paper={paper} />
        </Answer>
      ))}
      <Answer asks="Letting go of the tube in place">
        {releaseLines(answer).map((line) => (
          <AnswerLine key={line}>{line}</AnswerLine>
        ))}
      </Answer>
      <Answer asks="Have ready">
        {readyLines(ready).map((line) => (
          <AnswerLine key={line}>{line}</AnswerLine>
        ))}
        <ShelfWires wires={ready.wires} paper={paper} />
      </Answer>
    </div>
  );
}

function Answer({ asks, children }: { readonly asks: string; readonly children: ReactNode }): ReactNode {
  return (
    <section className={styles.answer}>
      <h3 className={styles.of}>{asks}</h3>
      <div>{children}</div>
    </section>
  );
}

type PairLineProps = { readonly pair: Pair; readonly paper: boolean; readonly named?: boolean };

/** One thing in another: the line, what it rests on, and of a wire the picture. */
function PairLine({ pair, paper, named = false }: PairLineProps): ReactNode {
  const { inner, outer, passage, bySize } = pair;
  const goes = namedIn(pair);
  const stops = bySize.verdict === "does not pass" || bySize.verdict === "doubt";
  const through = named ? `${goes.name} in the ${outer.sort === "tube" ? "tube to come" : outer.sort}: ` : "";
  return (
    <>
      <AnswerLine now={stops}>
        {through}
        {sizeLine(bySize, goes)}
      </AnswerLine>
      {inner.sort === "wire" && !paper && isDrawn(inner.outside) && (
        <BoreDrawing of={outer.name} profile={boreProfile(passage, outer.outside)} />
      )}
      <Grounds bySize={bySize} named={goes} open={paper} />
    </>
  );
}

const isDrawn = (outside: Fact<unknown>): boolean => known(outside) !== undefined;
