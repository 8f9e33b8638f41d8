import type { Day } from "#shared/day/day.ts";
import type { When } from "#shared/day/when.ts";
import type { EventKind, Payload } from "#shared/tube/payloads.ts";

/** The versions that a date comes from. A date depends on these and on events, on nothing else. */
export type Pins = { readonly protocol: number; readonly calendar: number };

type Envelope = {
  readonly id: string;
  /** Recorded sequence within the patient, from 1. */
  readonly seq: number;
  readonly when: When;
  /** Clock time at the clinic as entered, `HH:MM`; null when only the day is known. */
  readonly time: string | null;
  /** Order within one day where times are not known. */
  readonly daySequence: number;
  /** Clinic day on which it was recorded. */
  readonly recordedOn: Day;
  readonly tubes: readonly string[];
  readonly pins: Pins | null;
  /** The event that an `amended` or `voided` event speaks of; null on all others. */
  readonly amends: string | null;
};

export type EventOf<K extends EventKind> = Envelope & { readonly kind: K; readonly payload: Payload<K> };

/** One of several kinds, told apart by its kind. */
export type AnyEventOf<K extends EventKind> = { [Kind in K]: EventOf<Kind> }[K];

/** One entry of a patient's stream, at the newest payload version. */
export type TubeEvent = AnyEventOf<EventKind>;
