import type { StoredDraft } from "#app/ui/recording/use-draft.ts";
import type { PlanRows, PlanTube } from "#shared/fit/exchange-plan.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";
import type { ExchangePlanned } from "#shared/tube/exchange-planned.ts";

/** What a recording page hands to the browser: plain data, from which the one form that it shows is made. */
export type EventFormProps = {
  readonly kind: FormKind;
  readonly patientId: string;
  readonly tubeId: string | null;
  readonly context: FormContext;
  readonly lastSeen: number;
  readonly draft: StoredDraft | null;
  /** Where Escape leads, and where one goes on after saving. */
  readonly leaveTo: string;
  /** What stands typed as a new form opens, because the page knows it from what is open. */
  readonly begun?: Texts;
  /** Set where an entry is corrected: which, and what it says now, as typed today. */
  readonly amends: { readonly eventId: string; readonly texts: Texts } | null;
  /** What a planned exchange is held against; null where the form plans none. */
  readonly plan: {
    readonly tube: PlanTube;
    readonly rows: PlanRows;
    readonly before: ExchangePlanned | null;
  } | null;
};
