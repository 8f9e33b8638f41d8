import type { Person } from "#shared/access/person.ts";
import type { Instant } from "#shared/day/instant.ts";

/** Somebody's signed-in browser. It ends at the earlier of the two instants, which are the machine's, not the clinic's. */
export type Session = {
  readonly tokenHash: string;
  readonly person: Person;
  readonly lastSeenAt: Instant;
  /** When nothing is done until then. */
  readonly idleEndsAt: Instant;
  /** In any case. */
  readonly endsAt: Instant;
};
