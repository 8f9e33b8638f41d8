import { parsed, type Refusal, unread } from "#shared/errors/refusal.ts";
import type { Coaxial, CoaxialSort } from "#shared/fit/coaxial.ts";
import type { Bore, TubeInside } from "#shared/fit/inside.ts";
import { boresField } from "#shared/record/field/bores-field.ts";
import { choicesOf, factChoiceField } from "#shared/record/field/choice-field.ts";
import { factWords } from "#shared/record/field/fact-words.ts";
import type { FieldWords } from "#shared/record/field/field-words.ts";
import { optionalLengthField, printSize } from "#shared/record/field/length-field.ts";
import { lineField } from "#shared/record/field/text-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { form } from "#shared/record/form.ts";
import { readOutside } from "#shared/shelf/outside.ts";
import { type WiderInside, widerInside } from "#shared/shelf/wider-inside.ts";
import type { Length } from "#shared/size/length.ts";
import { printLength } from "#shared/size/print-length.ts";
import { type Fact, known, unknownFact } from "#shared/tube/certainty.ts";

type Typed = {
  readonly outside: Fact<Length>;
  readonly length: Fact<Length> | undefined;
  readonly takes: Fact<Length> | undefined;
  readonly takesDevice: Fact<Length> | undefined;
  readonly bores: readonly Bore[] | undefined;
  readonly endHole: Fact<"open" | "closed"> | undefined;
  readonly tolerance: Fact<Length> | undefined;
  readonly name: string | null;
};

const outsideHints = {
  wire: ".035 in",
  needle: "21 g, 0.8 mm",
  stiffener: "1.3 mm, 4 f",
  dilator: "10 f",
  tube: "8 f, 2.7 mm",
  sheath: "12 f, 4 mm",
  extension: "8 f",
} as const satisfies Record<CoaxialSort, string>;

/** Each in its trade's unit with millimetres beside it. */
const printedAs = (sort: CoaxialSort) => (length: Length) =>
  printSize(sort === "wire" ? "wire" : sort === "needle" ? "bore" : "tube outside", length);

/** What a thing is outside; a blank says as little as "?". */
const outsideField = (sort: CoaxialSort): FieldSpec<Fact<Length>> => ({
  label: "Outside",
  hint: outsideHints[sort],
  read: (text) => (text.trim() === "" ? parsed(unknownFact) : readOutside(text, sort)),
  echo: (fact) => factWords(fact, printedAs(sort)),
});

/** A field of an inside, which a wire has none of: there it is not asked, and what stands in it is to mend. */
function ofInside<T>(sort: CoaxialSort, field: FieldSpec<T>): FieldSpec<T> {
  if (sort !== "wire") return field;
  return {
    ...field,
    belongs: () => false,
    read: (text) => (text.trim() === "" ? field.read(text) : unread("wire-has-no-inside")),
  };
}

const insideFields = (sort: CoaxialSort) => ({
  takes: ofInside(
    sort,
    optionalLengthField({ label: "Takes a wire of (label)", hint: ".035 in, as the package says" }, "takes"),
  ),
  takesDevice: ofInside(
    sort,
    optionalLengthField(
      { label: "Takes a device of (label)", hint: "8 f, the device's outside" },
      "tube outside",
    ),
  ),
  bores: ofInside(
    sort,
    boresField({ label: "Insides, measured", hint: "hub 2.0 mm, shaft 1.9 mm, end hole .038 in" }),
  ),
  endHole: ofInside(
    sort,
    factChoiceField<"open" | "closed">({ label: "End hole", detail: true }, choicesOf(["open", "closed"])),
  ),
});

const toleranceWords: FieldWords = {
  label: "Outside more or less",
  hint: "0.1 mm; blank takes the clinic's row",
  detail: true,
};

function widerRefusal({ by, place, inside, outside }: WiderInside): Refusal {
  const printed = (length: Length) => printLength(length, "mm");
  const args = { place, inside: printed(inside), outside: printed(outside) };
  return { code: "inside-wider-than-outside", field: by, args };
}

const insideOf = ({ takes, takesDevice, bores, endHole }: Typed): TubeInside => ({
  takes: takes ?? unknownFact,
  takesDevice: takesDevice ?? unknownFact,
  bores: bores ?? [],
  endHole: endHole ?? unknownFact,
});

/** One thing that lies in another or has another in it, of that sort: what is blank is unknown, and is not asked for. */
export const coaxialForm = form<Typed, Coaxial, { readonly sort: CoaxialSort }>({
  fields: ({ sort }) => ({
    outside: outsideField(sort),
    length: optionalLengthField(
      { label: "Length, cm", hint: sort === "wire" ? "145" : "25" },
      sort === "wire" ? "wire length" : "tube length",
    ),
    ...insideFields(sort),
    tolerance: optionalLengthField(toleranceWords, "bore tolerance"),
    name: lineField({ label: "Called", hint: "if it has a name here", detail: true }),
  }),
  check: (typed) => {
    const wider = widerInside(typed.outside, insideOf(typed));
    return wider === null ? [] : [widerRefusal(wider)];
  },
  entry: (typed, { sort }) => ({
    sort,
    name: typed.name ?? "",
    outside: typed.outside,
    tolerance: typed.tolerance === undefined ? null : (known(typed.tolerance) ?? null),
    inside: insideOf(typed),
    length: typed.length ?? unknownFact,
  }),
});
