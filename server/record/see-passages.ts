import type { Database } from "#db/sqlite.ts";
import { viewTube } from "#server/tubes/view-tube.ts";
import { passagesOfPlan, seenCodes } from "#shared/fit/tube-in-place.ts";
import type { Entry } from "#shared/record/form.ts";

/** A planned exchange keeps what its maker saw of the wire in both tubes; every other entry stays as it is. */
export function withWhatWasSeen(db: Database, entry: Entry, tubeId: string | null): Entry {
  if (entry.kind !== "exchange planned" || tubeId === null) return entry;
  const seen = seenCodes(passagesOfPlan(entry.payload, viewTube(db, tubeId)));
  return { ...entry, payload: { ...entry.payload, seen } };
}
