import type { Coaxial, CoaxialSort } from "#shared/fit/coaxial.ts";
import type { PassageRows } from "#shared/fit/passage.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import type { Length } from "#shared/size/length.ts";
import { confirmed, type Fact, unknownFact } from "#shared/tube/certainty.ts";
import { blank } from "#tests/factories/tube-inside.ts";

export const mm = (figure: number): Length => lengthOf(figure, "mm");
export const cm = (figure: number): Length => lengthOf(figure, "cm");
export const F = (figure: number): Length => lengthOf(figure, "F");

/** A plain value is confirmed; nothing that is left out is known. */
type Said = Partial<Omit<Coaxial, "sort" | "outside" | "length">> & {
  readonly outside?: Length | Fact<Length>;
  readonly length?: Length | Fact<Length>;
};

const asFact = (said: Length | Fact<Length> | undefined): Fact<Length> =>
  typeof said === "number" ? confirmed(said) : (said ?? unknownFact);

export const coaxial = (sort: CoaxialSort, { outside, length, ...said }: Said = {}): Coaxial => ({
  sort,
  name: `the ${sort}`,
  tolerance: null,
  inside: blank,
  ...said,
  outside: asFact(outside),
  length: asFact(length),
});

/**
 * The example's rows, written out: clearance 0.001 in (0.0254 mm), a bore +-0.05 mm, a wire as it is, a device +-0.33 mm about the size as
 * stated. shared/fit/tube-in-place.test.ts holds that they are the example's.
 */
export const exampleRows: PassageRows = {
  clearance: mm(0.0254),
  boreTolerance: mm(0.05),
  outsideTolerance: { wire: mm(0), device: mm(0.33) },
};
