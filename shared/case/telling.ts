import type { CaseRecord } from "#shared/case/case-schema.ts";
import { addDays, type Day, isDay } from "#shared/day/day.ts";
import { type Instant, instantAt } from "#shared/day/instant.ts";
import type { Refusal } from "#shared/errors/refusal.ts";

/**
 * What comes of telling a case. `refused`: a form or a decision said what to mend, in which entry; that can be expected.
 * `mistake`: the case itself cannot be run.
 */
export type Telling<T> =
  | { readonly kind: "told"; readonly value: T }
  | { readonly kind: "refused"; readonly entry: number | null; readonly refusals: readonly Refusal[] }
  | { readonly kind: "mistake"; readonly refusal: Refusal };

export const told = <T>(value: T): Telling<T> => ({ kind: "told", value });

export const mistake = (code: Refusal["code"], args: Refusal["args"]): Telling<never> => ({
  kind: "mistake",
  refusal: { code, args },
});

const NOON = "12:00";

/** A day of a case: of the calendar, or so many days after its start, which is the day of what names none. */
export function dayOf({ start }: Pick<CaseRecord, "start">, text: string | undefined): Day {
  if (text === undefined) return start;
  return isDay(text) ? text : addDays(start, Number(text));
}

/** The instant at which something of a case is typed or looked at: noon unless it says when. */
export function momentOf(
  record: Pick<CaseRecord, "start" | "zone">,
  { on, at }: { readonly on?: string | undefined; readonly at?: string | undefined },
): Telling<Instant> {
  const read = instantAt(dayOf(record, on), at ?? NOON, record.zone);
  return read.ok ? told(read.value) : { kind: "mistake", refusal: read.refusal };
}
