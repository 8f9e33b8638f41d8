import type { Refusal } from "#shared/errors/refusal.ts";
import { type Coaxial, type CoaxialSort, isSolid } from "#shared/fit/coaxial.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { coaxialForm } from "#shared/record/fit/coaxial-form.ts";

/** One row of a chain as it is typed. */
export type TypedThing = { readonly sort: CoaxialSort; readonly texts: Texts };

export type ChainReading =
  | { readonly ok: true; readonly things: readonly Coaxial[] }
  /** What is to mend, a list a row, each with its field; a row that can be read has an empty one. */
  | { readonly ok: false; readonly refusals: readonly (readonly Refusal[])[] };

/** Rows as typed, the innermost first, as things of a chain. A wire anywhere but innermost is to mend: nothing goes through it. */
export function readChain(typed: readonly TypedThing[]): ChainReading {
  const rows = typed.map(({ sort, texts }, index) => {
    const read = coaxialForm.read(texts, { sort });
    const misplaced: readonly Refusal[] =
      index > 0 && isSolid({ sort }) ? [{ code: "wire-not-innermost", field: "sort" }] : [];
    return { read, refusals: [...misplaced, ...(read.ok ? [] : read.refusals)] };
  });
  if (rows.some(({ refusals }) => refusals.length > 0))
    return { ok: false, refusals: rows.map(({ refusals }) => refusals) };
  return { ok: true, things: rows.flatMap(({ read }) => (read.ok ? [read.entry] : [])) };
}
