"use client";

import type { ReactNode } from "react";
import { openedWith } from "#app/record/opened-with.ts";
import { draftStore } from "#app/ui/recording/draft-store.ts";
import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import { RecordingForm } from "#app/ui/recording-form.tsx";
import { type SendSlot, sendSlot } from "#app/visit/send-slot.ts";
import { Booked } from "#app/visit/slot-picker.tsx";
import type { Refusal } from "#shared/errors/refusal.ts";
import type { FieldSpecs, Texts } from "#shared/record/field-spec.ts";
import { bookingForm } from "#shared/record/visit/booking-form.ts";
import { movingForm } from "#shared/record/visit/moving-form.ts";
import type { VisitContext } from "#shared/record/visit/slot-fields.ts";
import type { NotOn } from "#shared/visit/visit.ts";

type TypedSlotProps = {
  readonly to: SendSlot;
  readonly context: VisitContext & { readonly notOn: NotOn };
  /** What a day's or a week's page filled in. */
  readonly begun: Texts;
  readonly lastSeen: number;
  readonly draft: StoredDraft | null;
  readonly leaveTo: string;
};

/** Another slot than the three: typed, or in the hospital's own book. The server holds it against the rooms and says what stands against it. */
export function TypedSlot(props: TypedSlotProps): ReactNode {
  const { to, context } = props;
  return to.kind === "move" ? (
    <Form
      {...props}
      fields={movingForm.fields(context)}
      check={(values) => movingForm.check?.(values, context) ?? []}
    />
  ) : (
    <Form
      {...props}
      fields={bookingForm.fields(context)}
      check={(values) => bookingForm.check?.(values, context) ?? []}
    />
  );
}

type FormProps<V> = TypedSlotProps & {
  readonly fields: FieldSpecs<V>;
  readonly check: (values: V) => readonly Refusal[];
};

function Form<V>({ to, begun, lastSeen, draft, leaveTo, fields, check }: FormProps<V>): ReactNode {
  const isMove = to.kind === "move";
  const form = isMove ? "visit.moved" : "visit.booked";
  return (
    <RecordingForm
      fields={openedWith(fields, begun)}
      check={check}
      act={isMove ? "Move the visit" : "Book the visit"}
      lastSeen={lastSeen}
      draft={draft}
      drafts={draftStore(form, to.kind === "move" ? to.visitId : to.patientId)}
      send={(texts, act) => sendSlot(to, texts, act)}
      leaveTo={leaveTo}
      saved={(result) => <Booked result={result} isMove={isMove} />}
    />
  );
}
