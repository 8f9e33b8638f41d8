import type { ReactNode } from "react";
import { AnswerLine } from "#app/bore/answer-line.tsx";
import type { ExchangeAnswer } from "#shared/fit/exchange-plan.ts";
import type { PlanningRows } from "#shared/protocol/planning-rows.ts";
import { doubtWords } from "#shared/words/exchange-plan.ts";
import { sizeLine } from "#shared/words/passage.ts";
import styles from "./passage.module.css";

type PlanInShortProps = {
  readonly answer: ExchangeAnswer;
  readonly reasons: PlanningRows["reasons"];
};

/** What a plan needs someone for, in two or three lines beside the wire; the whole stands beneath the form. */
export function PlanInShort({ answer, reasons }: PlanInShortProps): ReactNode {
  const { doubts, throughOld, throughNew } = answer;
  const asked = doubts.filter((doubt) => reasons?.asks.includes(doubt));
  return (
    <output className={styles.lines}>
      <AnswerLine now={throughOld.pair.bySize.verdict === "does not pass"}>
        In the tube in place: {sizeLine(throughOld.pair.bySize)}
      </AnswerLine>
      {throughNew.pairs.slice(0, 1).map(({ bySize }) => (
        <AnswerLine key="new" now={bySize.verdict === "does not pass"}>
          In the tube to come: {sizeLine(bySize)}
        </AnswerLine>
      ))}
      {doubts.length > 0 && (
        <AnswerLine>Of this plan: {doubts.map((doubt) => doubtWords[doubt]).join("; ")}.</AnswerLine>
      )}
      {asked.length > 0 && (
        <AnswerLine>
          The clinic's row asks for a reason where {asked.map((doubt) => doubtWords[doubt]).join(" or ")}: one
          key in the last field.
        </AnswerLine>
      )}
    </output>
  );
}
