import { unhandedFlags } from "#db/queries/unhanded-flags.ts";
import type { Database } from "#db/sqlite.ts";
import { clockText } from "#shared/day/instant.ts";
import type { UnhandedFlag } from "#shared/words/unhanded-flags.ts";

/** Red flags that nobody has, the oldest first: one indexed query, since every page asks for them. */
export const listUnhanded = (db: Database): readonly UnhandedFlag[] =>
  unhandedFlags(db).map(({ at, zone, recordedAt: _recordedAt, ...flag }) => ({
    ...flag,
    time: at === null ? null : clockText(at, zone),
  }));
