import { newId } from "#server/ids.ts";
import type { Telling } from "#server/record/tell-of-patient.ts";
import type { FlagTyped } from "#shared/record/call/raise-flag-form.ts";

/** A red flag as it was typed, and its handing where somebody has it, each at its own time. `id`: that of the flag. */
export function raisingOf(typed: FlagTyped, id = newId()): readonly Telling[] {
  const { when, time, handed, ...payload } = typed;
  const raised: Telling = { kind: "red flag raised", id, at: { when, time }, payload };
  if (handed === null) return [raised];
  const { to, ...at } = handed;
  return [raised, { kind: "red flag handed", at, payload: { flag: id, to, note: null } }];
}
