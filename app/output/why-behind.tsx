import type { ReactNode } from "react";
import type { OutputPage } from "#app/tubes/tube-page.ts";
import { Soft } from "#app/ui/soft.tsx";
import type { IfUnchanged } from "#shared/output/trend/if-unchanged.ts";
import { printRate } from "#shared/words/output.ts";
import {
  fallWords,
  halfLifeWords,
  ifUnchangedWords,
  kendallWords,
  leftOutLines,
  lineWords,
  noTrendWords,
  type Said,
  usedWords,
} from "#shared/words/trend.ts";
import styles from "./output.module.css";

type Trend = OutputPage["trend"];
type Told = Extract<Trend, { kind: "told" }>;

type WhyBehindProps = {
  readonly trend: Trend;
  /** Null for whoever is not shown it, and where there is none to show. */
  readonly ifUnchanged: IfUnchanged | null;
};

/** What stands behind the figures, folded: it explains, and nothing in it raises anything. */
export function WhyBehind({ trend, ifUnchanged }: WhyBehindProps): ReactNode {
  const nothing = noTrendWords(trend);
  return (
    <details className={styles.why}>
      <summary>Why, behind the figures</summary>
      {nothing !== null && <p>{nothing}</p>}
      {trend.kind === "told" && <TrendParts trend={trend} ifUnchanged={ifUnchanged} />}
      {trend.kind !== "does not apply" && <LeftOut lines={leftOutLines(trend.days)} />}
    </details>
  );
}

function TrendParts({ trend, ifUnchanged }: WhyBehindProps & { readonly trend: Told }): ReactNode {
  const { days, median, line, kendall, halfLife, fall } = trend;
  // Where no row asks for low output the span is no question.
  const asked = ifUnchanged !== null && !(ifUnchanged.kind === "none" && ifUnchanged.because === "no-row");
  return (
    <>
      <p>These figures explain. None of them raises an alarm or meets a criterion.</p>
      <dl className={styles.parts}>
        <Part name="Days" said={{ says: usedWords(days), sum: "Complete days since the last change." }} />
        <Part name="Median" said={{ says: `${printRate(median)}.`, sum: "The middle one of these days." }} />
        <Part name="Slope" said={lineWords(line)} />
        <Part name="Chance" said={kendallWords(kendall)} />
        <Part name="Half-life" said={halfLifeWords(halfLife)} />
        <Part name="Fall" said={fallWords(fall)} />
        {asked && <Part name="If unchanged" said={ifUnchangedWords(ifUnchanged)} />}
      </dl>
    </>
  );
}

/** One figure with its arithmetic beneath. */
function Part({ name, said }: { readonly name: string; readonly said: Said }): ReactNode {
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        {said.says}
        {said.sum !== "" && (
          <>
            {" "}
            <Soft>{said.sum}</Soft>
          </>
        )}
      </dd>
    </div>
  );
}

function LeftOut({ lines }: { readonly lines: readonly string[] }): ReactNode {
  if (lines.length === 0) return null;
  return (
    <>
      <p>Days left out:</p>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}
