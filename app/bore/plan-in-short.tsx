import type { ReactNode } from "react";
import { AnswerLine } from "#app/bore/answer-line.tsx";
import type { ExchangeAnswer } from "#shared/fit/exchange-plan.ts";
import type { BySize } from "#shared/fit/passage.ts";
import type { PlanningRows } from "#shared/protocol/planning-rows.ts";
import { dilatorLine, doubtWords, lengthLine, stepLine, tractLine } from "#shared/words/exchange-plan.ts";
import { sizeLine } from "#shared/words/passage.ts";
import styles from "./passage.module.css";

type PlanInShortProps = {
  readonly answer: ExchangeAnswer;
  readonly reasons: PlanningRows["reasons"];
};

/** What a plan says, in short: all of it in one look while it is typed. The whole, with its grounds, stands beneath the form. */
export function PlanInShort({ answer, reasons }: PlanInShortProps): ReactNode {
  const { doubts, throughOld, throughNew, length, step, dilators, tract, ready } = answer;
  const asked = doubts.filter((doubt) => reasons?.asks.includes(doubt));
  const dilating = dilatorLine(dilators);
  const passing = ready.wires.filter(({ verdict }) => verdict === "passes").map(({ type }) => type.name);
  const [inNew] = throughNew.pairs;
  return (
    <output className={styles.short}>
      <SizeLine of="Tube in place" bySize={throughOld.pair.bySize} />
      {inNew !== undefined && (
        <SizeLine of={inNew.outer.sort === "tube" ? "Tube to come" : "Stiffener"} bySize={inNew.bySize} />
      )}
      <AnswerLine now={length.verdict === "too short"}>Length: {lengthLine(length)}</AnswerLine>
      <AnswerLine now={step.verdict === "over the step with a note"}>
        {stepLine(step)}
        {dilating !== null && ` Dilators: ${dilating}`}
      </AnswerLine>
      <AnswerLine now={tract.maturity === "immature"}>{tractLine(tract)}</AnswerLine>
      <AnswerLine>
        {passing.length === 0
          ? "No wire on the shelf is known to pass both tubes by size."
          : `On the shelf these pass both tubes by size, their length apart: ${passing.join("; ")}.`}
      </AnswerLine>
      {asked.length > 0 && (
        <AnswerLine>
          The clinic's row asks for a reason where {asked.map((doubt) => doubtWords[doubt]).join(" or ")}: one
          key in that field.
        </AnswerLine>
      )}
    </output>
  );
}

type SizeLineProps = { readonly of: string; readonly bySize: BySize };

const SizeLine = ({ of, bySize }: SizeLineProps): ReactNode => (
  <AnswerLine now={bySize.verdict === "does not pass" || bySize.verdict === "doubt"}>
    {of}: {sizeLine(bySize)}
  </AnswerLine>
);
