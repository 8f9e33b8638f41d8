import { addDays, type Day } from "#shared/day/day.ts";
import { dayAt, endOfDay, type Instant, startOfDay, type Zone } from "#shared/day/instant.ts";
import type { Span } from "#shared/output/measured-interval.ts";

/** A clinic day, or the part of one that lies in one segment: a change of size or mode, placement and removal cut a day. */
export type DayPart = Span & {
  readonly day: Day;
  /** 0 before the first cut, 1 after it, and so on. */
  readonly segment: number;
  readonly whole: boolean;
};

export type Stretch = {
  /** The days of these instants are the first and the last. */
  readonly first: Instant;
  readonly last: Instant;
  /** Where the tube's own time begins and ends, when known: nothing is asked of the hours outside. */
  readonly opens: Instant | null;
  readonly closes: Instant | null;
  readonly cuts: readonly Instant[];
};

/** Every part of every day from the first to the last, in order and without a gap. A day may have 23 or 25 hours. */
export function dayParts({ first, last, opens, closes, cuts }: Stretch, zone: Zone): DayPart[] {
  const parts: DayPart[] = [];
  const lastDay = dayAt(last, zone);
  let end = startOfDay(dayAt(first, zone), zone);
  for (let day = dayAt(first, zone); day <= lastDay; day = addDays(day, 1)) {
    const start = end;
    end = endOfDay(day, zone);
    const from = opens !== null && opens > start ? opens : start;
    const to = closes !== null && closes < end ? closes : end;
    const inside = [...new Set(cuts)].filter((cut) => from < cut && cut < to).sort((a, b) => a - b);
    const edges = [from, ...inside, to];
    for (const [index, edge] of edges.slice(0, -1).entries()) {
      const next = edges[index + 1] ?? to;
      const segment = cuts.filter((cut) => cut <= edge).length;
      if (edge < next)
        parts.push({ day, segment, from: edge, to: next, whole: edge === start && next === end });
    }
  }
  return parts;
}
