import type { Reading } from "#shared/output/reading.ts";
import { type ReadingEntry, standingReadings } from "#shared/output/reading-log.ts";
import type { Payload } from "#shared/tube/payloads.ts";

/** What was seen when a review was decided: the readings that stood, by id, and the codes of what was concluded from them. */
export type Evidence = NonNullable<Payload<"review decided">["evidence"]>;

/** What became of a reading since it was seen. An added one speaks of time before the decision and was written down after it. */
export type EvidenceChange =
  | { readonly change: "corrected"; readonly was: Reading; readonly now: Reading }
  | { readonly change: "taken out"; readonly was: Reading }
  | { readonly change: "added"; readonly now: Reading };

/** How many readings that were seen stand no more, and how many stand that speak of the time before the decision and were not seen. */
export function changedCount({ asOf, readings }: Evidence, standing: readonly Reading[]) {
  const seen = new Set(readings);
  const now = new Set(standing.map(({ id }) => id));
  return {
    gone: readings.filter((id) => !now.has(id)).length,
    other: standing.filter(({ id, to }) => to <= asOf && !seen.has(id)).length,
  };
}

/** Who stands now in the place of each reading that was ever written down. */
function successors(log: readonly ReadingEntry[]): ReadonlyMap<string, readonly string[]> {
  const after = new Map<string, string[]>();
  for (const entry of log)
    if (entry.act === "replaced")
      after.set(entry.replaces, [...(after.get(entry.replaces) ?? []), entry.reading.id]);
  return after;
}

/**
 * How the log differs from what a decision rested on, in the order of the readings. Readings that end after the decision are no change: they
 * came later. Empty: what was seen stands as it was.
 */
export function evidenceChanges(evidence: Evidence, log: readonly ReadingEntry[]): EvidenceChange[] {
  const standing = new Map(standingReadings(log).map((reading) => [reading.id, reading]));
  const written = new Map(
    log.flatMap((entry) => (entry.act === "voided" ? [] : [[entry.reading.id, entry.reading]])),
  );
  const after = successors(log);
  const heir = (id: string): Reading | undefined =>
    standing.get(id) ?? (after.get(id) ?? []).map(heir).find((reading) => reading !== undefined);

  const taken = new Set<string>(evidence.readings);
  const seen = evidence.readings.flatMap((id): EvidenceChange[] => {
    const was = written.get(id);
    if (was === undefined || standing.has(id)) return [];
    const now = heir(id);
    if (now === undefined) return [{ change: "taken out", was }];
    taken.add(now.id);
    return [{ change: "corrected", was, now }];
  });
  const added = [...standing.values()]
    .filter(({ id, to }) => to <= evidence.asOf && !taken.has(id))
    .map((now): EvidenceChange => ({ change: "added", now }));
  return [...seen, ...added];
}
