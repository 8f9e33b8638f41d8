import type { Day } from "#shared/day/day.ts";
import type { When } from "#shared/day/when.ts";
import type { Level } from "#shared/protocol/levels.ts";

export type At = { readonly when: When; readonly time: string | null; readonly recordedOn: Day };

/** A red flag from when it was told until somebody records what was done. */
export type OpenFlag = At & {
  /** The entry that raised it. */
  readonly id: string;
  readonly row: string | null;
  readonly level: Level;
  readonly says: string;
  /** What holds until somebody is reached; null is "no row". */
  readonly untilReached: string | null;
  readonly tubeId: string | null;
  readonly toldBy: string | null;
  readonly note: string | null;
  /** The last person whom it was handed to; null: nobody has it. */
  readonly handed: (At & { readonly eventId: string; readonly to: string }) | null;
  /** When somebody first had it. */
  readonly firstHanded: At | null;
};

/** One of which somebody recorded what was done: what the figures count. */
export type DoneFlag = {
  readonly id: string;
  readonly level: Level;
  readonly raised: At;
  /** When somebody first had it; null where it was done before anybody recorded that. */
  readonly handed: At | null;
  readonly done: At;
};
