import { clinicOf } from "#db/queries/clinic.ts";
import type { Database } from "#db/sqlite.ts";
import { formContext } from "#server/record/form-context.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { dayAt, type Instant } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { eventForms, type FormKind } from "#shared/record/event-forms.ts";
import type { FormContext } from "#shared/record/form.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { opensTube } from "#shared/tube/event-kinds.ts";
import { openedTubes } from "#shared/tube/order.ts";

export type EntryContext = {
  readonly kind: FormKind;
  readonly event: TubeEvent;
  readonly context: FormContext;
};

const isFormKind = (kind: string): kind is FormKind => Object.hasOwn(eventForms, kind);

/** The id and number that the record has which this entry opened: an amendment must not open another. */
function opens(event: TubeEvent): FormContext["opens"] | null {
  const tubeId = openedTubes(event)[0];
  if (tubeId === undefined || !opensTube(event.kind)) return null;
  if (event.kind === "converted") return { tubeId, number: event.payload.opening.number };
  return event.kind === "placed" || event.kind === "taken over"
    ? { tubeId, number: event.payload.number }
    : null;
}

/** What an entry is read beside when it is read again at that instant. Refuses an entry that is not this patient's or has no form. */
export function entryContext(
  db: Database,
  at: Instant,
  { patientId, eventId }: { readonly patientId: string; readonly eventId: string },
): EntryContext {
  const event = loadRecord(db, patientId).events.find(({ id }) => id === eventId);
  if (event === undefined || !isFormKind(event.kind)) throw new DomainError({ code: "entry-unknown" });
  const tubeId = opensTube(event.kind) && event.kind !== "converted" ? null : (event.tubes[0] ?? null);
  const context = formContext(db, at, { patientId, tubeId });
  const { zone } = clinicOf(db);
  return {
    kind: event.kind,
    event,
    context: { ...context, opens: opens(event) ?? context.opens, today: dayAt(at, zone) },
  };
}
