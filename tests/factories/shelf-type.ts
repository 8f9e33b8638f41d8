import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";

/** A wire of 0.035 in of which nothing else is known, unless said otherwise. */
export const shelfType = (said: Partial<ShelfType> = {}): ShelfType => ({
  id: `type-${said.name ?? "Standard 0.035"}`,
  sort: "wire",
  name: "Standard 0.035",
  kinds: [],
  outside: confirmed(lengthOf(0.035, "in")),
  tolerance: null,
  takes: unknownFact,
  takesDevice: unknownFact,
  bores: [],
  endHole: unknownFact,
  length: unknownFact,
  retention: unknownFact,
  ...said,
});
