import * as z from "zod";
import { type Reading, readingSchema } from "#shared/output/reading.ts";

const id = z.string().min(1, "text-missing").max(64, "text-too-long");
const reason = z.string().trim().min(1, "text-missing").max(500, "text-too-long");
const seq = z.int().min(1);

/** One row of the log of readings, which is only ever added to. `seq` is the order in which they were recorded. */
export const readingEntrySchema = z.discriminatedUnion("act", [
  z.strictObject({ act: z.literal("recorded"), seq, reading: readingSchema }),
  z.strictObject({ act: z.literal("replaced"), seq, reading: readingSchema, replaces: id, reason }),
  z.strictObject({ act: z.literal("voided"), seq, id, replaces: id, reason }),
]);
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
