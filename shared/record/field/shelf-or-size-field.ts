import { parsed } from "#shared/errors/refusal.ts";
import type { CoaxialSort } from "#shared/fit/coaxial.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { optionalLengthField } from "#shared/record/field/length-field.ts";
import { shelfField } from "#shared/record/field/shelf-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";
import { nameKey } from "#shared/shelf/name-key.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import type { Length } from "#shared/size/length.ts";
import type { LengthField } from "#shared/size/read-length.ts";
import type { Fact } from "#shared/tube/certainty.ts";

/** A size that was typed, or the type on the shelf that was named. */
export type SizeOrType = Fact<Length> | ShelfType;

export const isType = (said: SizeOrType): said is ShelfType => "sort" in said;

type Things = { readonly thing: LengthField["thing"]; readonly sort: CoaxialSort };

/** What a size begins with; anything else is the beginning of a name. */
const SIZE_BEGINS = /^[~?.,\d−-]/;

/**
 * "0.035 in", or the name of a type on the clinic's shelf, in any case or by a beginning that only one has. A name that reads like a size
 * is the name where it is written out in full; a bare number asks for its unit. Blank is undefined.
 */
export function shelfOrSizeField(
  words: FieldWords,
  { thing, sort }: Things,
  context: Pick<FormContext, "shelf">,
): FieldSpec<SizeOrType | undefined> {
  const size = optionalLengthField(words, thing);
  const type = shelfField(words, [sort], context);
  const isNamed = (text: string): boolean =>
    context.shelf.some((each) => each.sort === sort && nameKey(each.name) === nameKey(text));
  return {
    ...words,
    read: (text) => {
      if (text.trim() === "") return parsed(undefined);
      const named = parsedType(type.read(text));
      if (isNamed(text) || !SIZE_BEGINS.test(text.trim())) return named;
      const read = size.read(text);
      const isNoSize = !read.ok && read.refusal.code === "length-not-understood";
      return isNoSize && named.ok ? named : read;
    },
    echo: (said) => {
      if (said === undefined) return "";
      return (isType(said) ? type.echo?.(said) : size.echo?.(said)) ?? "";
    },
  };
}

const parsedType = (read: ReturnType<FieldSpec<ShelfType | null>["read"]>) =>
  read.ok ? parsed(read.value ?? undefined) : read;
