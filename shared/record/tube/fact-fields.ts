import type { Bore } from "#shared/fit/inside.ts";
import { balloonField } from "#shared/record/field/balloon-field.ts";
import { boresField } from "#shared/record/field/bores-field.ts";
import { choicesOf, factChoiceField } from "#shared/record/field/choice-field.ts";
import { optionalLengthField } from "#shared/record/field/length-field.ts";
import { textFactField } from "#shared/record/field/text-field.ts";
import { wordsField } from "#shared/record/field/words-field.ts";
import type { FormContext } from "#shared/record/form.ts";
import { sourced } from "#shared/record/sourced.ts";
import { filledFromShelf, fromShelfField } from "#shared/record/tube/from-shelf.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";
import type { TubeFacts } from "#shared/tube/facts.ts";
import { characters, retentions } from "#shared/tube/vocabulary.ts";
import { characterWords } from "#shared/words/characters.ts";
import { retentionWords } from "#shared/words/retentions.ts";

export const SIZE_HINT = "8 f, 2.7 mm; ~8 f if about; ? if unknown";

/** Everything that can be said of the tube itself beside its size. */
export const factFields = (context: Pick<FormContext, "shelf">) => ({
  takes: optionalLengthField(
    { label: "Takes a wire of (label)", hint: ".035 in, as the package says", detail: true },
    "takes",
  ),
  shelf: fromShelfField(context),
  endHole: factChoiceField(
    { label: "End hole", detail: true },
    choicesOf<"open" | "closed">(["open", "closed"]),
  ),
  bores: boresField({
    label: "Insides, measured",
    hint: "hub 2.0 mm, shaft 1.9 mm, end hole .038 in",
    detail: true,
  }),
  fullLength: optionalLengthField({ label: "Full length, cm", detail: true }, "tube length"),
  externalLength: optionalLengthField(
    { label: "External length, skin to hub, cm", detail: true },
    "external length",
  ),
  retention: factChoiceField({ label: "Held by", detail: true }, choicesOf(retentions, retentionWords)),
  fixation: textFactField({ label: "Fixation at the skin", hint: "anchors, disc, dressing", detail: true }),
  flushOrder: textFactField({ label: "Flush ordered", hint: "10 mL x 3 a day, or none", detail: true }),
  balloon: balloonField({ label: "Water in the balloon, mL", detail: true }),
  expectedFluid: wordsField(
    { label: "Expected fluid", hint: `with commas between: ${characters.join(", ")}`, detail: true },
    characterWords,
  ),
});

type Read<F> = F extends { readonly read: (text: string) => infer R }
  ? Extract<R, { readonly ok: true }> extends { readonly value: infer V }
    ? V
    : never
  : never;

/** What the fields of facts read, and the size, which each form asks in its own place. */
export type TypedFacts = {
  readonly [Name in keyof ReturnType<typeof factFields>]: Read<ReturnType<typeof factFields>[Name]>;
} & { readonly size: TubeFacts["size"] };

type Saying = {
  /** Somebody else said it: what is typed is reported. */
  readonly toldByOthers: boolean;
  /** A record that opens says of every blank that it is unknown; elsewhere a blank says nothing. */
  readonly blank: "unknown" | "says nothing";
};

/** The typed facts as an entry stores them, with what the chosen type of the shelf says of the rest. */
export function factsOf(said: TypedFacts, { toldByOthers, blank }: Saying): TubeFacts {
  const typed = filledFromShelf(said);
  const say = <T>(fact: Fact<T> | undefined): Fact<T> | undefined => {
    if (fact !== undefined) return sourced(fact, toldByOthers);
    return blank === "unknown" ? unknownFact : undefined;
  };
  const ofBore = (bore: Bore): Bore => ({ ...bore, inside: sourced(bore.inside, toldByOthers) });
  const facts: TubeFacts = {
    size: say(typed.size),
    takes: say(typed.takes),
    bores: typed.bores?.map(ofBore),
    endHole: say(typed.endHole),
    fullLength: say(typed.fullLength),
    externalLength: say(typed.externalLength),
    retention: say(typed.retention),
    balloonMl: say(typed.balloon),
    fixation: say(typed.fixation),
    flushOrder: say(typed.flushOrder),
    expectedFluid: typed.expectedFluid === undefined ? undefined : [...typed.expectedFluid],
  };
  return Object.fromEntries(Object.entries(facts).filter(([, fact]) => fact !== undefined));
}
