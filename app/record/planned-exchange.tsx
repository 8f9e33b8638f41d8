"use client";

import type { ReactNode } from "react";
import { ExchangeAnswers } from "#app/bore/exchange-answers.tsx";
import { PlanInShort } from "#app/bore/plan-in-short.tsx";
import { EventForm } from "#app/record/event-form.tsx";
import type { EventFormProps } from "#app/record/form-props.ts";
import type { Day } from "#shared/day/day.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import { type ExchangeAnswer, exchangeAnswer } from "#shared/fit/exchange-plan.ts";
import { checkedOn } from "#shared/fit/tube-in-place.ts";
import { reasonMissing, reasonOf } from "#shared/record/tube/plan-reason.ts";
import { type TypedPlan, thingsOf } from "#shared/record/tube/plan-things.ts";
import { plannedExchangeForm } from "#shared/record/tube/planned-exchange-form.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";

type Typed = TypedPlan & {
  readonly on?: Day | null | undefined;
  readonly kind?: { readonly kind: TubeKind } | undefined;
};

/** Plan the exchange: what the recorded facts say of it is said as it is typed, in short at the side and in full beneath. */
export function PlannedExchange(props: EventFormProps): ReactNode {
  const { plan, context } = props;
  const answer = ({ on = null, kind, ...typed }: Typed): ExchangeAnswer | null =>
    plan === null
      ? null
      : exchangeAnswer({ on, kind: kind?.kind ?? plan.tube.kind, ...thingsOf(typed) }, plan.tube, {
          rows: plan.rows,
          shelf: context.shelf,
        });
  return (
    <EventForm
      {...props}
      form={{
        ...plannedExchangeForm,
        check: (typed, beside) => [
          ...(plannedExchangeForm.check?.(typed, beside) ?? []),
          ...reasonAsked(plan, answer(typed), typed),
        ],
      }}
      warnings={{
        beside: (typed) => {
          const says = answer(typed);
          return (
            says !== null && <PlanInShort answer={says} reasons={plan?.rows.planning?.reasons ?? null} />
          );
        },
        beneath: (typed) => {
          const says = answer(typed);
          return (
            says !== null && (
              <section>
                <h2>What the recorded facts say</h2>
                <ExchangeAnswers answer={says} />
              </section>
            )
          );
        },
      }}
    />
  );
}

type Reasoned = TypedPlan & { readonly reason: string | null };

/** The reason that a row asks for is asked before anything is sent; the server asks again. */
function reasonAsked(
  plan: EventFormProps["plan"],
  answer: ExchangeAnswer | null,
  { reason, ...typed }: Reasoned,
): readonly Refusal[] {
  if (plan === null || answer === null) return [];
  const now = { reason, things: thingsOf(typed), checkedOn: checkedOn(plan.tube) };
  const rows = plan.rows.planning?.reasons ?? null;
  const missing = reasonMissing(reasonOf({ before: plan.before, now }, rows), answer.doubts, rows);
  return missing === null ? [] : [missing];
}
