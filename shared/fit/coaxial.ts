import type { TubeInside } from "#shared/fit/inside.ts";
import type { Goes } from "#shared/fit/passage.ts";
import type { Length } from "#shared/size/length.ts";
import type { Fact } from "#shared/tube/certainty.ts";

/** What lies one in another. The tract is none of these: it has no bore, and stands in no chain. */
export const coaxialSorts = [
  "wire",
  "needle",
  "stiffener",
  "dilator",
  "tube",
  "sheath",
  "extension",
] as const;
export type CoaxialSort = (typeof coaxialSorts)[number];

/** One of them as it is recorded. A wire is solid: `inside` says nothing of it and is not asked. */
export type Coaxial = {
  readonly sort: CoaxialSort;
  /** What it is called here: "tube in place", or the name on the clinic's shelf. */
  readonly name: string;
  readonly outside: Fact<Length>;
  /** What the outside may be off by; null takes the clinic's row. */
  readonly tolerance: Length | null;
  readonly inside: TubeInside;
  readonly length: Fact<Length>;
};

export const isSolid = ({ sort }: Pick<Coaxial, "sort">): boolean => sort === "wire";

export const goesAs = ({
  sort,
  outside,
  tolerance,
}: Pick<Coaxial, "sort" | "outside" | "tolerance">): Goes => ({
  as: sort === "wire" ? "wire" : "device",
  outside,
  tolerance,
});
