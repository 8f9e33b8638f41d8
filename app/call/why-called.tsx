import type { ReactNode } from "react";
import type { ListLine } from "#app/lists/list-line.ts";
import type { Day } from "#shared/day/day.ts";
import { betweenVisits } from "#shared/step/step.ts";
import { standingBesideName, stepNames } from "#shared/words/steps.ts";
import { whySentence } from "#shared/words/why.ts";

type WhyCalledProps = { readonly steps: readonly ListLine[]; readonly today: Day };

/** What is asked by telephone now or next, each with where it stands and why. */
export function WhyCalled({ steps, today }: WhyCalledProps): ReactNode {
  const asked = steps.filter(({ step }) => betweenVisits.includes(step.kind));
  if (asked.length === 0) return <p>No call is due. One can be made and recorded all the same.</p>;
  return asked.map(({ step }) => (
    <details key={step.id}>
      <summary>
        {stepNames[step.kind]}: {standingBesideName(step, today)}
      </summary>
      <ul>
        {step.why.map((line) => (
          <li key={JSON.stringify(line)}>{whySentence(line)}</li>
        ))}
      </ul>
    </details>
  ));
}
