import type { Refusal } from "#shared/errors/refusal.ts";
import type { Bore } from "#shared/fit/inside.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { lengthField, optionalLengthField } from "#shared/record/field/length-field.ts";
import { shelfField } from "#shared/record/field/shelf-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import type { FormContext } from "#shared/record/form.ts";
import { insideWider } from "#shared/record/inside-wider.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import type { Length } from "#shared/size/length.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import type { Retention } from "#shared/tube/vocabulary.ts";

const hasTubes = ({ shelf }: Pick<FormContext, "shelf">): boolean =>
  shelf.some(({ sort }) => sort === "tube");

/** A tube of the clinic's shelf, which says what is left blank. Not asked where the shelf has no tube. */
export const fromShelfField = (context: Pick<FormContext, "shelf">): FieldSpec<ShelfType | null> => ({
  ...shelfField(
    { label: "From the shelf", hint: "a tube by its name there; it says what is left blank", detail: true },
    ["tube"],
    context,
  ),
  belongs: () => hasTubes(context),
});

/** A size that is typed, unless a type of the shelf can say it: then `sizeRefusals` asks for one of the two. */
export const sizeOrShelfField = (
  words: FieldWords,
  context: Pick<FormContext, "shelf">,
): FieldSpec<Fact<Length> | undefined> => {
  const optional = optionalLengthField(words, "tube outside");
  return hasTubes(context) ? optional : { ...optional, read: lengthField(words, "tube outside").read };
};

/** What a type of the shelf can say of a tube; undefined is what nobody typed. */
type Sayable = {
  readonly shelf: ShelfType | null;
  readonly size: Fact<Length> | undefined;
  readonly takes: Fact<Length> | undefined;
  readonly bores: readonly Bore[] | undefined;
  readonly endHole: Fact<"open" | "closed"> | undefined;
  readonly fullLength: Fact<Length> | undefined;
  readonly retention: Fact<Retention> | undefined;
};

const said = <T>(fact: Fact<T>): Fact<T> | undefined => (fact.certainty === "unknown" ? undefined : fact);

/** What was typed, and what the chosen type says of the rest. What is typed wins, a typed "?" too. */
export function filledFromShelf<F extends Sayable>(typed: F): F {
  const { shelf: type } = typed;
  if (type === null) return typed;
  return {
    ...typed,
    size: typed.size ?? said(type.outside),
    takes: typed.takes ?? said(type.takes),
    bores: typed.bores ?? (type.bores.length === 0 ? undefined : type.bores),
    endHole: typed.endHole ?? said(type.endHole),
    fullLength: typed.fullLength ?? said(type.length),
    retention: typed.retention ?? said(type.retention),
  };
}

/** A size is typed, or the chosen type has one. */
export const sizeRefusals = (typed: Sayable): readonly Refusal[] =>
  filledFromShelf(typed).size === undefined
    ? [{ code: "text-missing", field: "size", args: { what: "a size with its unit, or ? if it is unknown" } }]
    : [];

/** Of size, label and insides, as typed and as the chosen type says: no inside is wider than the outside. */
export function insideRefusals(typed: Sayable): readonly Refusal[] {
  const { size, takes, bores } = filledFromShelf(typed);
  return insideWider({ sort: "tube", outside: size, takes, bores });
}
