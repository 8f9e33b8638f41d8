import type { Database } from "#db/sqlite.ts";

/** A patient as last computed, in JSON. */
export type StoredState = { readonly patientId: string; readonly state: string };

/** Every patient that anything was recorded of, row by row, so that no more than one stands in memory. */
export const everyPatientState = ({ sqlite }: Database): IterableIterator<StoredState> =>
  sqlite.prepare<[], StoredState>("select patient_id as patientId, state from patient_states").iterate();
