import type { ReactNode } from "react";
import { ladderWords } from "#app/tubes/step-owner.ts";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { sourceLines } from "#shared/protocol/sources.ts";
import type { OpenStep, Why } from "#shared/step/step.ts";
import { sumsOf } from "#shared/words/sums.ts";
import { whySentence } from "#shared/words/why.ts";
import styles from "./tube.module.css";

/** Everything that a step's dates rest on: entries, row and version, arithmetic, what the calendar moved, sources. */
export function StepWhy({ step }: { readonly step: OpenStep }): ReactNode {
  const ladder = ladderWords(step);
  const sources = step.why.flatMap(({ args }) =>
    typeof args.source === "string" ? sourceLines(args.source) : [],
  );
  return (
    <div className={styles.why}>
      <ul>
        {step.why.map((line) => (
          <li key={`${line.code} ${line.eventId ?? ""} ${line.args.end ?? ""} ${line.args.key ?? ""}`}>
            <WhyLine line={line} />
          </li>
        ))}
      </ul>
      <Sums step={step} />
      {step.provisional && <p>Provisional: it rests on a date that is rough or not confirmed.</p>}
      {ladder !== "" && <p>{ladder}</p>}
      {sources.length > 0 && (
        <ul className={styles.sources}>
          {[...new Set(sources)].map((source) => (
            <li key={source}>{source}</li>
          ))}
        </ul>
      )}
    </div>
  );
}

function WhyLine({ line }: { readonly line: Why }): ReactNode {
  return (
    <>
      {whySentence(line)} {line.code === "row-example" && <ExampleMark />}
      {line.eventId !== null && <a href={`#${line.eventId}`}>the entry</a>}
    </>
  );
}

function Sums({ step }: { readonly step: OpenStep }): ReactNode {
  const sums = sumsOf(step);
  if (sums.length === 0) return null;
  return (
    <dl className={styles.sums}>
      {sums.map(({ end, words }) => (
        <div key={end} className={styles.end}>
          <dt>{end}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
  );
}
