import type { Coaxial } from "#shared/fit/coaxial.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";

/** A type as it lies in a chain. */
export const coaxialOf = ({
  sort,
  name,
  outside,
  tolerance,
  takes,
  takesDevice,
  bores,
  endHole,
  length,
}: ShelfType): Coaxial => ({
  sort,
  name,
  outside,
  tolerance,
  inside: { takes, takesDevice, bores, endHole },
  length,
});
