"use client";

import type { ReactNode } from "react";
import { api } from "#app/_trpc/client.ts";
import type { EventFormProps } from "#app/record/form-props.ts";
import { openedWith } from "#app/record/opened-with.ts";
import { patientProcedures, tubeProcedures } from "#app/record/procedures.ts";
import { Recorded } from "#app/record/recorded.tsx";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { Act } from "#app/ui/recording/use-recording.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import type { Refusal } from "#shared/errors/refusal.ts";
import { amendForm } from "#shared/record/amend/amend-form.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { FieldSpecs, Texts } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";
import { actLabels } from "#shared/words/acts.ts";

/** One form as data, as far as a page shows it. */
export type ShownForm<V> = {
  readonly fields: (context: FormContext) => FieldSpecs<V>;
  readonly check?: (values: V, context: FormContext) => readonly Refusal[];
};

type Warnings<V> = Pick<Parameters<typeof RecordingForm<V, unknown>>[0], "after" | "beneath" | "beside">;

type Props<V> = EventFormProps & { readonly form: ShownForm<V>; readonly warnings?: Warnings<V> };

const isOf = <F extends FormKind>(forms: Readonly<Record<F, string>>, kind: FormKind): kind is F =>
  Object.hasOwn(forms, kind);

/** Sends what was typed to the procedure of this form, or as an amendment of the entry that it corrects. */
function sendOf({ kind, patientId, tubeId, amends }: EventFormProps) {
  return (texts: Texts, act: Act) => {
    const said = { ...act, texts, patientId };
    if (amends !== null) return api.record.amended.mutate({ ...said, eventId: amends.eventId });
    if (isOf(patientProcedures, kind)) return api.record[patientProcedures[kind]].mutate(said);
    if (isOf(tubeProcedures, kind) && tubeId !== null)
      return api.record[tubeProcedures[kind]].mutate({ ...said, tubeId });
    throw new Error(`no procedure takes "${kind}"`);
  };
}

/** A form that records an event, or corrects one. */
export function EventForm<V>(props: Props<V>): ReactNode {
  const { form, kind, context, amends, begun } = props;
  const fields = form.fields(context);
  const check = (values: V): readonly Refusal[] => form.check?.(values, context) ?? [];
  return amends === null ? (
    <Form
      {...props}
      fields={begun === undefined ? fields : openedWith(fields, begun)}
      check={check}
      name={`record.${kind.replaceAll(" ", "-")}`}
      act={actLabels[kind]}
    />
  ) : (
    <Form
      {...props}
      check={check}
      fields={{ ...amendForm.fields(), ...openedWith(fields, amends.texts) }}
      name="record.amended"
      act="Correct the entry"
    />
  );
}

type FormProps<V> = Omit<Props<V>, "form"> & {
  readonly fields: FieldSpecs<V>;
  readonly check: (values: V) => readonly Refusal[];
  readonly name: string;
  readonly act: string;
};

function Form<V>(props: FormProps<V>): ReactNode {
  const { fields, check, name, act, patientId, tubeId, amends, lastSeen, draft, leaveTo, warnings } = props;
  return (
    <RecordingForm
      {...warnings}
      fields={fields}
      check={check}
      act={act}
      lastSeen={lastSeen}
      draft={draft}
      drafts={draftStore(name, amends?.eventId ?? tubeId ?? patientId)}
      send={sendOf(props)}
      leaveTo={leaveTo}
      saved={(result) => (
        <Recorded said={`${act}: saved.`} actId={result.actId}>
          <a href={result.tubeId === null ? leaveTo : `/tubes/${result.tubeId}`}>
            {result.tubeId === null ? "To the patient" : "To the tube"}
          </a>
        </Recorded>
      )}
    />
  );
}
