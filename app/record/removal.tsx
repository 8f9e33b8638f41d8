"use client";

import type { ReactNode } from "react";
import { EventForm } from "#app/record/event-form.tsx";
import type { EventFormProps } from "#app/record/form-props.ts";
import { patientFormHref } from "#app/record/procedures.ts";
import { Now } from "#app/ui/now.tsx";
import type { FormContext } from "#shared/record/form.ts";
import { removalForm } from "#shared/record/tube/removal-form.ts";
import { mayBeTakenFor } from "#shared/tube/may-be-taken-for.ts";
import { numberedTitle } from "#shared/tube/name.ts";

/** Record a removal. What another told may have been told of another tube: which of them is asked where it is typed. */
export function Removal(props: EventFormProps): ReactNode {
  const { context, patientId } = props;
  return (
    <EventForm
      {...props}
      form={removalForm}
      warnings={{
        after: {
          field: "toldBy",
          says: ({ toldBy }) =>
            toldBy === null || toldBy === undefined ? null : (
              <WhichOf context={context} patientId={patientId} />
            ),
        },
      }}
    />
  );
}

type WhichOfProps = { readonly context: FormContext; readonly patientId: string };

function WhichOf({ context: { tube, tubes }, patientId }: WhichOfProps): ReactNode {
  const others = tube === null ? [] : mayBeTakenFor(tube, tubes);
  if (others.length === 0) return null;
  return (
    <p role="status">
      <Now>Which of {others.length === 1 ? "the two" : "them"}?</Now> Also in by this record:{" "}
      {others.map(numberedTitle).join(", ")}. Ask which was taken out; if nobody can say,{" "}
      <a href={patientFormHref(patientId, "reported out")}>record that one of them was reported out</a>.
    </p>
  );
}
