import type { Role } from "#shared/tube/vocabulary.ts";

/** Roles whose tubes come out by a volume at all. Of every other, low output is an alarm, meant, or no measure. */
export const byVolume: readonly Role[] = ["collection", "air and fluid", "intermittent"];
