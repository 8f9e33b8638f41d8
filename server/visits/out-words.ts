import { clinicOf } from "#db/queries/clinic.ts";
import type { Database } from "#db/sqlite.ts";
import { viewTube } from "#server/tubes/view-tube.ts";
import type { Instant } from "#shared/day/instant.ts";
import { outSince } from "#shared/tube/out-since.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { immatureWords, outSinceWords, tractWords } from "#shared/words/clocks.ts";

/** What a tube that is out brings along: for how long, how old its tract is, what its row says of a tract of that age. */
export function outWords(
  db: Database,
  { id, dislodged, story, tract, ...tube }: TubeState,
  at: Instant,
): string {
  const { row, tractAge: age } = viewTube(db, id);
  const time = story.find(({ eventId }) => eventId === dislodged?.eventId)?.time ?? null;
  const since = dislodged === null ? null : outSince({ when: dislodged.when, time }, at, clinicOf(db).zone);
  const limit = row.found === "row" ? immatureWords(age, row.row.immatureUnder) : null;
  const part = tube.status === "in" ? "partly " : "";
  return [
    `${part}${outSinceWords(since)}`,
    `tract ${tractWords(age, tract)}`,
    limit ?? "no row for the tract",
  ].join("; ");
}
