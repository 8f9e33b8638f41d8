import type * as z from "zod";
import type { Reading } from "#shared/output/reading.ts";
import type { readingEntrySchema } from "#shared/output/reading-log-schema.ts";

/** One row of the log of readings, which is only ever added to. */
export type ReadingEntry = z.infer<typeof readingEntrySchema>;

type Amendment = Exclude<ReadingEntry, { act: "recorded" }>;

const idOf = (entry: ReadingEntry): string => (entry.act === "voided" ? entry.id : entry.reading.id);

/**
 * The readings that stand: each with its newest standing amendment, voided ones gone. An amendment may itself be replaced or
 * voided, which brings back what stood before it; one of an entry that is not there changes nothing.
 */
export function standingReadings(entries: readonly ReadingEntry[]): Reading[] {
  const inOrder = [...entries].sort((a, b) => a.seq - b.seq);
  const amendments = new Map<string, Amendment[]>();
  for (const entry of inOrder) {
    if (entry.act === "recorded") continue;
    amendments.set(entry.replaces, [...(amendments.get(entry.replaces) ?? []), entry]);
  }
  /** What the entry says now: a reading, "voids" for a standing void, null when it was voided itself. */
  const resolve = (entry: ReadingEntry): Reading | "voids" | null => {
    let now: Reading | "voids" | null = entry.act === "voided" ? "voids" : entry.reading;
    for (const amendment of amendments.get(idOf(entry)) ?? []) {
      const said = resolve(amendment);
      if (said !== null) now = said === "voids" ? null : said;
    }
    return now;
  };
  return inOrder.flatMap((entry) => {
    const now = entry.act === "recorded" ? resolve(entry) : null;
    return now === null || now === "voids" ? [] : [now];
  });
}
