import type { Refusal } from "#shared/errors/refusal.ts";
import { type CoaxialSort, coaxialSorts, isSolid } from "#shared/fit/coaxial.ts";
import { type Bore, places } from "#shared/fit/inside.ts";
import { boresField } from "#shared/record/field/bores-field.ts";
import { choiceField, choicesOf, factChoiceField } from "#shared/record/field/choice-field.ts";
import { kindWords } from "#shared/record/field/kind-field.ts";
import { optionalLengthField } from "#shared/record/field/length-field.ts";
import { filledField } from "#shared/record/field/text-field.ts";
import { wordsField } from "#shared/record/field/words-field.ts";
import type { FieldSpecs, Texts } from "#shared/record/field-spec.ts";
import { type FormContext, form } from "#shared/record/form.ts";
import { insideWider } from "#shared/record/inside-wider.ts";
import { type BySort, outsideField, wholeLengthField } from "#shared/record/shelf/by-sort-field.ts";
import { sourced } from "#shared/record/sourced.ts";
import { nameKey } from "#shared/shelf/name-key.ts";
import type { NewShelfType } from "#shared/shelf/shelf-type.ts";
import type { Length } from "#shared/size/length.ts";
import { type Fact, known, unknownFact } from "#shared/tube/certainty.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import { type Retention, retentions } from "#shared/tube/vocabulary.ts";
import { retentionWords } from "#shared/words/retentions.ts";
import { sortWords } from "#shared/words/shelf.ts";

/** The shelf as it stands, and which of its types the form changes; null where it adds one. */
export type ShelfContext = Pick<FormContext, "shelf"> & { readonly changes: string | null };

export const knownFrom = ["confirmed", "reported"] as const;
export type KnownFrom = (typeof knownFrom)[number];

type Typed = {
  readonly sort: CoaxialSort;
  readonly name: string;
  readonly outside: BySort;
  readonly takes: Fact<Length> | undefined;
  readonly takesDevice: Fact<Length> | undefined;
  readonly bores: readonly Bore[] | undefined;
  readonly endHole: Fact<"open" | "closed"> | undefined;
  readonly length: BySort;
  readonly retention: Fact<Retention> | undefined;
  readonly kinds: readonly TubeKind[] | undefined;
  readonly tolerance: Fact<Length> | undefined;
  readonly certainty: KnownFrom;
};

const saysOtherThan =
  (...sorts: readonly CoaxialSort[]) =>
  ({ sort = "" }: Texts): boolean =>
    !sorts.some((each) => each === sort);
const ofTubes = ({ sort }: Texts): boolean => sort === "tube";

const shelfFields = (): FieldSpecs<Typed> => ({
  sort: choiceField({ label: "Sort", what: "what sort of thing it is" }, choicesOf(coaxialSorts, sortWords)),
  name: filledField(
    { label: "Name", hint: "as you call it: Standard 0.035, 145 cm" },
    "the name that you call it by",
  ),
  outside: outsideField({ label: "Outside", hint: ".035 in, 8 f, 2.7 mm, 21 g; ~ for about; ? if unknown" }),
  takes: {
    ...optionalLengthField(
      { label: "Takes a wire of (label)", hint: ".035 in, as the package says" },
      "takes",
    ),
    belongs: saysOtherThan("wire"),
  },
  takesDevice: {
    ...optionalLengthField(
      { label: "Takes a device of (label)", hint: "7 f, by the outside of what goes in" },
      "tube outside",
    ),
    belongs: saysOtherThan("wire", "needle"),
  },
  bores: {
    ...boresField({ label: "Insides, measured", hint: "hub 2.0 mm, shaft 1.9 mm, end hole .038 in" }),
    belongs: saysOtherThan("wire"),
  },
  endHole: {
    ...factChoiceField({ label: "End hole" }, choicesOf<"open" | "closed">(["open", "closed"])),
    belongs: saysOtherThan("wire", "needle"),
  },
  length: wholeLengthField({ label: "Length, cm", hint: "145; blank if unknown" }),
  retention: {
    ...factChoiceField({ label: "Held by" }, choicesOf(retentions, retentionWords)),
    belongs: ofTubes,
  },
  kinds: {
    ...wordsField(
      { label: "Kinds of tube", hint: "abscess drain, pcn; with commas between; blank: for any" },
      kindWords,
    ),
    belongs: ofTubes,
  },
  tolerance: optionalLengthField(
    { label: "Tolerance of the outside", hint: "0.05 mm; blank: the protocol's row", detail: true },
    "bore tolerance",
  ),
  certainty: choiceField(
    { label: "Known from", what: "where it is known from", initial: "confirmed", detail: true },
    [
      { value: "confirmed", label: "The package, or measured here" },
      { value: "reported", label: "Told by others" },
    ],
  ),
});

function nameRefusals({ name }: Typed, { shelf, changes }: ShelfContext): readonly Refusal[] {
  const taken = shelf.some((type) => type.id !== changes && nameKey(type.name) === nameKey(name));
  return taken ? [{ code: "shelf-name-taken", field: "name", args: { text: name } }] : [];
}

/** Sizes that the sort does not have: a wire of 8 F, a tube of 260 cm. */
const sizeRefusals = ({ sort, outside, length }: Typed): readonly Refusal[] =>
  Object.entries({ outside, length }).flatMap(([field, of]) => {
    const read = of(sort);
    return read.ok ? [] : [{ ...read.refusal, field }];
  });

/** What is said of a thing and only another sort has. */
function sortRefusals({ sort, kinds, ...typed }: Typed): readonly Refusal[] {
  const facts = ["takes", "takesDevice", "endHole"] as const;
  const said = [
    ...facts.filter((field) => known<unknown>(typed[field] ?? unknownFact) !== undefined),
    ...(typed.bores === undefined ? [] : (["bores"] as const)),
  ];
  return [
    ...(isSolid({ sort }) ? said.map((field): Refusal => ({ code: "wire-has-no-inside", field })) : []),
    ...(kinds !== undefined && sort !== "tube"
      ? [{ code: "kinds-of-no-tube", field: "kinds" } as const]
      : []),
  ];
}

/** A wire is solid; of everything else no inside is wider than the outside. */
function insideRefusals({ sort, outside, takes, takesDevice, bores }: Typed): readonly Refusal[] {
  const read = outside(sort);
  if (!read.ok || isSolid({ sort })) return [];
  return insideWider({ sort, outside: read.value, takes, takesDevice, bores });
}

function sizeOf(of: BySort, sort: CoaxialSort): Fact<Length> {
  const read = of(sort);
  if (!read.ok) throw new RangeError(`no size of a ${sort}`);
  return read.value;
}

/** From the hub to the tip, however they were typed. */
const inOrder = (bores: readonly Bore[]): readonly Bore[] =>
  bores.toSorted((a, b) => places.indexOf(a.place) - places.indexOf(b.place));

/** One type on the clinic's shelf: add it, or change what is said of it. What is left blank is unknown. */
export const shelfForm = form({
  fields: (_context: ShelfContext) => shelfFields(),
  check: (typed: Typed, context) => [
    ...nameRefusals(typed, context),
    ...sizeRefusals(typed),
    ...sortRefusals(typed),
    ...insideRefusals(typed),
  ],
  entry: ({ sort, name, kinds, tolerance, bores, certainty, ...typed }: Typed): NewShelfType => {
    const say = <T>(fact: Fact<T> = unknownFact): Fact<T> => sourced(fact, certainty === "reported");
    return {
      sort,
      name,
      kinds: [...(kinds ?? [])],
      outside: say(sizeOf(typed.outside, sort)),
      tolerance: known(tolerance ?? unknownFact) ?? null,
      takes: say(typed.takes),
      takesDevice: say(typed.takesDevice),
      bores: inOrder(bores ?? []).map((bore) => ({ ...bore, inside: say(bore.inside) })),
      endHole: say(typed.endHole),
      length: say(sizeOf(typed.length, sort)),
      retention: say(typed.retention),
    };
  },
});
