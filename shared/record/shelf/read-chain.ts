import type { Refusal } from "#shared/errors/refusal.ts";
import { type Coaxial, type CoaxialSort, isSolid } from "#shared/fit/coaxial.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { shelfForm } from "#shared/record/shelf/shelf-form.ts";
import { coaxialOf } from "#shared/shelf/coaxial-of.ts";

/** One row of a chain as it is typed: the texts of the shelf's form, without what is of no account here. */
export type TypedThing = { readonly sort: CoaxialSort; readonly texts: Texts };

const noShelf = { shelf: [], changes: null };

/** The fields of one thing are the shelf's; how it is held and for which kinds it is are asked there and not here. */
const { outside, length, takes, takesDevice, bores, endHole, name, tolerance, certainty } =
  shelfForm.fields(noShelf);
export const chainFields = {
  outside,
  length,
  takes,
  takesDevice,
  bores,
  endHole,
  name,
  tolerance,
  certainty,
};

/** What is blank is unknown, and a thing without a name is called by its sort. */
function readThing({ sort, texts }: TypedThing) {
  const known = Object.keys(chainFields).flatMap((field) => {
    const text = texts[field];
    return text === undefined ? [] : [[field, text] as const];
  });
  const called = texts.name?.trim() ?? "";
  const read = shelfForm.read(
    { ...Object.fromEntries(known), sort, name: called || sort, outside: texts.outside?.trim() || "?" },
    noShelf,
  );
  return read.ok ? { ...read, entry: coaxialOf({ ...read.entry, id: "", name: called }) } : read;
}

export type ChainReading =
  | { readonly ok: true; readonly things: readonly Coaxial[] }
  /** What is to mend, a list a row, each with its field; a row that can be read has an empty one. */
  | { readonly ok: false; readonly refusals: readonly (readonly Refusal[])[] };

/** Rows as typed, the innermost first, as things of a chain. A wire anywhere but innermost is to mend: nothing goes through it. */
export function readChain(typed: readonly TypedThing[]): ChainReading {
  const rows = typed.map((thing, index) => {
    const read = readThing(thing);
    const misplaced: readonly Refusal[] =
      index > 0 && isSolid(thing) ? [{ code: "wire-not-innermost", field: "sort" }] : [];
    return { read, refusals: [...misplaced, ...(read.ok ? [] : read.refusals)] };
  });
  if (rows.some(({ refusals }) => refusals.length > 0))
    return { ok: false, refusals: rows.map(({ refusals }) => refusals) };
  return { ok: true, things: rows.flatMap(({ read }) => (read.ok ? [read.entry] : [])) };
}
