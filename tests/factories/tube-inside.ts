import fc from "fast-check";
import { type Bore, type Place, places, type TubeInside } from "#shared/fit/inside.ts";
import type { Passage, PassageRows } from "#shared/fit/passage.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import type { Length } from "#shared/size/length.ts";
import { confirmed, type Fact, unknownFact } from "#shared/tube/certainty.ts";

export const inch = (figure: number): Length => lengthOf(figure, "in");
export const reported = <T>(value: T): Fact<T> => ({ certainty: "reported", value });
export const estimated = <T>(value: T): Fact<T> => ({ certainty: "estimated", value });

/** Nobody has recorded anything of the inside. */
export const blank: TubeInside = { takes: unknownFact, bores: [], endHole: unknownFact };

/** Labelled for a wire, in inches; confirmed. */
export const takes = (figure: number): TubeInside => ({ ...blank, takes: confirmed(inch(figure)) });

/** Inches, confirmed when a number; a tolerance of null is not known. */
export const bore = (place: Place, inside: number | Fact<Length>, tolerance: number | null = 0): Bore => ({
  place,
  inside: typeof inside === "number" ? confirmed(inch(inside)) : inside,
  tolerance: tolerance === null ? null : inch(tolerance),
});
export const bores = (...list: Bore[]): TubeInside => ({ ...blank, bores: list });

export const rows: PassageRows = {
  clearance: inch(0.001),
  boreTolerance: inch(0.002),
  outsideTolerance: { wire: inch(0), device: inch(0.013) },
};
export const noRows: PassageRows = {
  clearance: undefined,
  boreTolerance: undefined,
  outsideTolerance: { wire: undefined, device: undefined },
};

/** Few and close lengths, so that limits are met often. */
export const someLength = fc.integer({ min: 1, max: 24 }).map((thousandths) => inch(thousandths / 1000));
export const someAllowance = fc.integer({ min: 0, max: 5 }).map((thousandths) => inch(thousandths / 1000));

export const someFact = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<Fact<T>> =>
  fc.oneof(
    { weight: 4, arbitrary: value.map(confirmed) },
    { weight: 1, arbitrary: value.map(reported) },
    { weight: 1, arbitrary: value.map(estimated) },
    { weight: 1, arbitrary: fc.constant<Fact<T>>(unknownFact) },
  );

const someBore: fc.Arbitrary<Bore> = fc.record({
  place: fc.constantFrom(...places),
  inside: someFact(someLength),
  tolerance: fc.option(someAllowance),
});

/** Anything through any tube under any rows. */
export const somePassage: fc.Arbitrary<Passage> = fc.record({
  goes: fc.record({
    as: fc.constantFrom("wire" as const, "device" as const),
    outside: someFact(someLength),
    tolerance: fc.option(someAllowance),
  }),
  inside: fc.record({
    takes: someFact(someLength),
    takesDevice: someFact(someLength),
    bores: fc.array(someBore, { maxLength: 5 }),
    endHole: someFact(fc.constantFrom("open" as const, "closed" as const)),
  }),
  rows: fc.record({
    clearance: fc.option(someAllowance, { nil: undefined }),
    boreTolerance: fc.option(someAllowance, { nil: undefined }),
    outsideTolerance: fc.record({
      wire: fc.option(someAllowance, { nil: undefined }),
      device: fc.option(someAllowance, { nil: undefined }),
    }),
  }),
});
