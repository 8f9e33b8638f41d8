"use client";

import type { ReactNode } from "react";
import { PassageDrawings } from "#app/bore/passage-drawings.tsx";
import { PassageLines } from "#app/bore/passage-lines.tsx";
import { EventForm } from "#app/record/event-form.tsx";
import type { EventFormProps } from "#app/record/form-props.ts";
import { type PlannedPassages, plannedPassages } from "#shared/fit/planned-passages.ts";
import { plannedExchangeForm } from "#shared/record/tube/planned-exchange-form.ts";
import type { Length } from "#shared/size/length.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";

type Typed = {
  readonly wire?: Fact<Length> | undefined;
  readonly takes?: Fact<Length> | undefined;
  readonly size?: Fact<Length> | undefined;
};

/** Plan the exchange: whether the wire passes either tube is said where it is typed, as it is typed. */
export function PlannedExchange(props: EventFormProps): ReactNode {
  const { passage } = props;
  const answer = ({
    wire = unknownFact,
    takes = unknownFact,
    size = unknownFact,
  }: Typed): PlannedPassages | null =>
    passage === null ? null : plannedPassages({ wire, takes, size }, passage.tube, passage.rows);
  return (
    <EventForm
      {...props}
      form={plannedExchangeForm}
      warnings={{
        after: { field: "wire", says: (typed) => <PassageLines passages={answer(typed)} /> },
        beneath: (typed) => <PassageDrawings passages={answer(typed)} />,
      }}
    />
  );
}
