import type { Day } from "#shared/day/day.ts";
import type { Instant, Zone } from "#shared/day/instant.ts";
import type { When } from "#shared/day/when.ts";
import { DomainError, type Refusal } from "#shared/errors/refusal.ts";
import { type FieldSpecs, readFields, type Texts } from "#shared/record/field-spec.ts";
import type { ReadingBeside } from "#shared/record/output/reading-beside.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import type { EventKind, Payload } from "#shared/tube/payloads.ts";
import type { AnsweredReason, TubeState } from "#shared/tube/state.ts";
import type { OwnerRole } from "#shared/tube/step-kinds.ts";
import type { UsualRow } from "#shared/tube/vocabulary.ts";

/** The tube that a form speaks of, as far as a form needs it. */
export type TubeInForm = Pick<TubeState, "id" | "kind" | "role" | "mode" | "side" | "concerns"> & {
  /** The first day on which a tube may have lain there: nothing was planned for it before. Null where that is unknown. */
  readonly inSince: Day | null;
  /** Why its alarm stands, in words, as closing it names them; empty where none stands. */
  readonly alarm: readonly ReasonInForm[];
};

export type ReasonInForm = AnsweredReason & { readonly says: string; readonly row: UsualRow | null };

/** A tube as a form about the patient names it, by the number that it has within the patient. */
export type NumberedTube = Pick<TubeState, "id" | "number" | "kind" | "side" | "status">;

export type StaffInForm = { readonly id: string; readonly fullName: string; readonly role: OwnerRole };

/** What a form is read beside. The page that shows it and the server that reads it again each make their own. */
export type FormContext = {
  readonly today: Day;
  readonly now: Instant;
  readonly zone: Zone;
  /** Null where the form opens a record or concerns the patient. */
  readonly tube: TubeInForm | null;
  /** Every tube of the patient, for a form that speaks of several; empty where a form speaks of one. */
  readonly tubes: readonly NumberedTube[];
  /** Id and number within the patient of a record that this form opens. The server draws both; a page may pass any. */
  readonly opens: { readonly tubeId: string; readonly number: number };
  /** Who a step can be handed to by name. */
  readonly staff: readonly StaffInForm[];
  /** What the clinic has on its shelf now, without what was taken off. */
  readonly shelf: readonly ShelfType[];
  /** The clinic's reasons on offer where a plan goes on all the same; absent where no plan is made. */
  readonly planReasons?: readonly string[];
  /** What a reading of the tube is held against; absent where none is typed. */
  readonly output?: ReadingBeside;
};

export type FormResult<E> =
  | { readonly ok: true; readonly entry: E }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** The entry that a form reads, where it can be read. Throws every refusal. */
export function entryOf<E>(read: FormResult<E>): E {
  if (!read.ok) throw new DomainError(read.refusals);
  return read.entry;
}

type FormParts<V, E, C> = {
  /** In the order in which they stand; the first is the one that is needed first. */
  readonly fields: (context: C) => FieldSpecs<V>;
  /** What the fields say against one another, once each can be read. */
  readonly check?: (values: V, context: C) => readonly Refusal[];
  readonly entry: (values: V, context: C) => E;
};

/** A recording form as data: browser, server, import and seed read the same texts by it. */
export type FormDefinition<V, E, C = FormContext> = FormParts<V, E, C> & {
  /** Typed texts as the entry they make, or every refusal with its field. */
  readonly read: (texts: Texts, context: C) => FormResult<E>;
};

export const form = <V, E, C>(parts: FormParts<V, E, C>): FormDefinition<V, E, C> => ({
  ...parts,
  read: (texts, context) => {
    const reading = readFields(parts.fields(context), texts);
    if (!reading.ok) return reading;
    const refusals = parts.check?.(reading.values, context) ?? [];
    if (refusals.length > 0) return { ok: false, refusals };
    return { ok: true, entry: parts.entry(reading.values, context) };
  },
});

/** What a form says happened, and when: `time` is `HH:MM` at the clinic, null where only the day is known. */
export type EntryOf<K extends EventKind> = {
  readonly kind: K;
  readonly when: When;
  readonly time: string | null;
  readonly payload: Payload<K>;
};
export type Entry = { readonly [K in EventKind]: EntryOf<K> }[EventKind];

/** A form that is read beside nothing else. */
export const plainForm = <V, E>(parts: FormParts<V, E, void>): FormDefinition<V, E, void> => form(parts);
