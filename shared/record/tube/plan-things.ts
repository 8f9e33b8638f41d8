import type { Coaxial, CoaxialSort } from "#shared/fit/coaxial.ts";
import type { ExchangePlan } from "#shared/fit/exchange-plan.ts";
import type { Bore } from "#shared/fit/inside.ts";
import { isType, type SizeOrType } from "#shared/record/field/shelf-or-size-field.ts";
import { coaxialOf } from "#shared/shelf/coaxial-of.ts";
import type { Length } from "#shared/size/length.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";

/** What the form of a planned exchange has read so far. */
export type TypedPlan = {
  readonly wire?: SizeOrType | undefined;
  readonly wireLength?: Fact<Length> | undefined;
  readonly size?: SizeOrType | undefined;
  readonly takes?: Fact<Length> | undefined;
  readonly fullLength?: Fact<Length> | undefined;
  readonly bores?: readonly Bore[] | undefined;
  readonly endHole?: Fact<"open" | "closed"> | undefined;
  readonly stiffener?: SizeOrType | undefined;
  readonly sheath?: SizeOrType | undefined;
  readonly sheathLength?: Fact<Length> | undefined;
};

const blank = { takes: unknownFact, bores: [], endHole: unknownFact } as const;

/** The type on the shelf; else a thing of that outside, of which nothing more is known. */
const thingOf = (said: SizeOrType | undefined, sort: CoaxialSort, name: string): Coaxial =>
  said !== undefined && isType(said)
    ? coaxialOf(said)
    : { sort, name, outside: said ?? unknownFact, tolerance: null, inside: blank, length: unknownFact };

function toComeOf({ size, takes, bores, endHole, fullLength }: TypedPlan): Coaxial {
  const thing = thingOf(size, "tube", "the tube to come");
  const { inside, length } = thing;
  return {
    ...thing,
    inside: {
      ...inside,
      takes: takes ?? inside.takes,
      bores: bores ?? inside.bores,
      endHole: endHole ?? inside.endHole,
    },
    length: fullLength ?? length,
  };
}

/** A sheath's size is its inside: one that is typed is no outside. */
function sheathOf({ sheath, sheathLength }: TypedPlan): Coaxial | null {
  if (sheath === undefined) return null;
  if (isType(sheath)) {
    const thing = coaxialOf(sheath);
    return { ...thing, length: sheathLength ?? thing.length };
  }
  const bores: readonly Bore[] = [{ place: "end hole", inside: sheath, tolerance: null }];
  const thing = thingOf(undefined, "sheath", "the sheath");
  return { ...thing, inside: { ...blank, bores }, length: sheathLength ?? unknownFact };
}

/** What lies one in another: each thing as the shelf has it or as it was typed; what is typed beside goes before the shelf. */
export function thingsOf(typed: TypedPlan): Omit<ExchangePlan, "on" | "kind"> {
  const wire = thingOf(typed.wire, "wire", "the wire");
  return {
    wire: { ...wire, length: typed.wireLength ?? wire.length },
    toCome: toComeOf(typed),
    stiffener: typed.stiffener === undefined ? null : thingOf(typed.stiffener, "stiffener", "the stiffener"),
    sheath: sheathOf(typed),
  };
}
