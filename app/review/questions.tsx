import type { ReactNode } from "react";
import type { TubePage } from "#app/tubes/tube-page.ts";
import { printDistance, printWhen } from "#shared/day/print-day.ts";
import { bearsOnPatency, clinicalAskedOf } from "#shared/review/asked-of.ts";
import { printLength } from "#shared/size/print-length.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import { findingNames, findingPhrase } from "#shared/words/clinical.ts";
import { immatureWords, tractWords } from "#shared/words/clocks.ts";
import { storySentence } from "#shared/words/events.ts";
import { toldFact } from "#shared/words/facts.ts";
import { printPlan } from "#shared/words/plan.ts";
import type { NameOf } from "#shared/words/sentence.ts";
import styles from "./review.module.css";

type Answer = { readonly word: string; readonly says: readonly string[]; readonly unknown?: boolean };

type QuestionsProps = { readonly view: TubePage; readonly nameOf: NameOf };

function newest({ view, nameOf }: QuestionsProps, kinds: readonly EventKind[]): readonly string[] {
  return kinds.flatMap((kind) => {
    const entry = view.story.find(
      (one) => one.kind === kind && (one.standing === "stands" || one.standing === "corrected"),
    );
    if (entry === undefined) return [];
    const on =
      entry.when.earliest === null ? "on an unknown day" : printDistance(entry.when.earliest, view.today);
    return [`${storySentence(entry, nameOf)} (${on})`];
  });
}

/** Each item with its age; what nobody ever spoke of is named, so that its lack is seen. */
function clinical({ clinical: state, tube, today }: TubePage): Answer {
  const asked = clinicalAskedOf(tube);
  const says = asked.flatMap((name) => {
    const found = state[name];
    if (found === undefined) return [];
    const day = found.when.earliest;
    return [
      `${findingPhrase(name, found.fact, "marked")} (${day === null ? printWhen(found.when) : printDistance(day, today)})`,
    ];
  });
  const missing = asked.filter((name) => state[name] === undefined).map((name) => findingNames[name]);
  return {
    word: "Clinical state",
    says: [...says, ...(missing.length === 0 ? [] : [`Not recorded: ${missing.join(", ")}`])],
    unknown: says.length === 0,
  };
}

function answersOf(props: QuestionsProps): readonly Answer[] {
  const { view } = props;
  const { tube, tractAge, row } = view;
  const immature = row.found === "row" ? immatureWords(tractAge, row.row.immatureUnder) : null;
  const patencySays = newest(props, bearsOnPatency);
  const external = toldFact(tube.externalLength, {
    what: "external length",
    print: (length) => `external length ${printLength(length, "cm")}`,
    telling: "marked",
  });
  const study = newest(props, ["checked"]);
  return [
    {
      word: "Operator's plan",
      says: [tube.plan === null ? "none recorded" : printPlan(tube.plan)],
      unknown: tube.plan === null,
    },
    { word: "For", says: [tube.role, tube.cavity === null ? "" : `cavity: ${tube.cavity}`].filter(Boolean) },
    { word: "Set", says: [tube.mode] },
    {
      word: "Patent?",
      says: [
        ...(patencySays.length === 0 ? ["no flush, leak or block recorded"] : patencySays),
        external,
        ...tube.concerns,
      ],
      unknown: patencySays.length === 0,
    },
    clinical(view),
    {
      word: "Cause",
      says: [tube.indication ?? "indication not recorded"],
      unknown: tube.indication === null,
    },
    { word: "Tract", says: [tractWords(tractAge, tube.tract), ...(immature === null ? [] : [immature])] },
    { word: "Last study", says: study.length === 0 ? ["none recorded"] : study, unknown: study.length === 0 },
  ];
}

/** What a physician asks of a tube, in that order, each with how old its answer is. What is unknown is said. */
export function Questions(props: QuestionsProps): ReactNode {
  return (
    <dl className={styles.questions}>
      {answersOf(props).map(({ word, says, unknown }) => (
        <div key={word}>
          <dt>{word}</dt>
          <dd data-unknown={unknown || undefined}>
            {says.map((line) => (
              <p key={line}>
                <bdi>{line}</bdi>
              </p>
            ))}
          </dd>
        </div>
      ))}
    </dl>
  );
}
