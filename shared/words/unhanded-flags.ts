import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";

/** A red flag that nobody has: whose, by the row's own words, and since when. */
export type UnhandedFlag = {
  readonly flagId: string;
  readonly patientId: string;
  readonly familyName: string;
  readonly givenName: string;
  readonly level: string;
  readonly says: string;
  /** Null where nobody knows. */
  readonly on: Day | null;
  readonly time: string | null;
};

/** "since 14:05"; of another day "since Fri 6 Nov 2026, 14:05"; "since an unknown day". */
export function sinceTold({ on, time }: Pick<UnhandedFlag, "on" | "time">, today: Day): string {
  if (on === null) return "since an unknown day";
  if (on === today) return time === null ? "since today" : `since ${time}`;
  return `since ${printDay(on)}${time === null ? "" : `, ${time}`}`;
}

/** What stands under the head of every page: "Red flag handed to nobody: Brackenfold, Ottoline, soaking leak, since 14:05". Null where somebody has each. */
export function unhandedLine(flags: readonly UnhandedFlag[], today: Day): string | null {
  const [oldest] = flags;
  if (oldest === undefined) return null;
  const { familyName, givenName, says } = oldest;
  const name = [familyName, givenName].filter((part) => part !== "").join(", ");
  const head =
    flags.length === 1
      ? "Red flag handed to nobody"
      : `${flags.length} red flags handed to nobody, the oldest`;
  return `${head}: ${name}, ${says}, ${sinceTold(oldest, today)}`;
}
