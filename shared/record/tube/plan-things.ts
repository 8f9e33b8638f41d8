import type { Coaxial, CoaxialSort } from "#shared/fit/coaxial.ts";
import type { ExchangePlan } from "#shared/fit/exchange-plan.ts";
import type { Bore } from "#shared/fit/inside.ts";
import { coaxialOf } from "#shared/shelf/coaxial-of.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import type { Length } from "#shared/size/length.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";

type Maybe<T> = T | null | undefined;

/** What the form of a planned exchange has read so far. */
export type TypedPlan = {
  readonly wireType?: Maybe<ShelfType>;
  readonly wire?: Maybe<Fact<Length>>;
  readonly wireLength?: Maybe<Fact<Length>>;
  readonly tubeType?: Maybe<ShelfType>;
  readonly size?: Maybe<Fact<Length>>;
  readonly takes?: Maybe<Fact<Length>>;
  readonly fullLength?: Maybe<Fact<Length>>;
  readonly bores?: Maybe<readonly Bore[]>;
  readonly endHole?: Maybe<Fact<"open" | "closed">>;
  readonly stiffenerType?: Maybe<ShelfType>;
  readonly sheathType?: Maybe<ShelfType>;
  readonly sheathInside?: Maybe<Fact<Length>>;
  readonly sheathLength?: Maybe<Fact<Length>>;
};

const blank = { takes: unknownFact, bores: [], endHole: unknownFact } as const;

/** The type on the shelf, or one of which nothing is known yet. */
const begun = (type: Maybe<ShelfType>, sort: CoaxialSort, name: string): Coaxial =>
  type
    ? coaxialOf(type)
    : { sort, name, outside: unknownFact, tolerance: null, inside: blank, length: unknownFact };

/** A size that was typed is not the type's: the tolerance of the shelf does not go with it. */
const sized = (thing: Coaxial, outside: Maybe<Fact<Length>>): Coaxial =>
  outside ? { ...thing, outside, tolerance: null } : thing;

function toComeOf(typed: TypedPlan): Coaxial {
  const thing = sized(begun(typed.tubeType, "tube", "the tube to come"), typed.size);
  const { inside, length } = thing;
  return {
    ...thing,
    inside: {
      ...inside,
      takes: typed.takes ?? inside.takes,
      bores: typed.bores ?? inside.bores,
      endHole: typed.endHole ?? inside.endHole,
    },
    length: typed.fullLength ?? length,
  };
}

function sheathOf({ sheathType, sheathInside, sheathLength }: TypedPlan): Coaxial | null {
  if (!sheathType && !sheathInside) return null;
  const thing = begun(sheathType, "sheath", "the sheath");
  const bores: readonly Bore[] = sheathInside
    ? [{ place: "end hole", inside: sheathInside, tolerance: null }]
    : thing.inside.bores;
  return { ...thing, inside: { ...thing.inside, bores }, length: sheathLength ?? thing.length };
}

/** What lies one in another: the type that was chosen of each, with what was typed in place of what the shelf says. */
export function thingsOf(typed: TypedPlan): Omit<ExchangePlan, "on" | "kind"> {
  const wire = sized(begun(typed.wireType, "wire", "the wire"), typed.wire);
  return {
    wire: { ...wire, length: typed.wireLength ?? wire.length },
    toCome: toComeOf(typed),
    stiffener: typed.stiffenerType ? coaxialOf(typed.stiffenerType) : null,
    sheath: sheathOf(typed),
  };
}
