import { printWhen } from "#shared/day/print-day.ts";
import type { Age } from "#shared/tube/clocks.ts";
import type { OutSince } from "#shared/tube/out-since.ts";
import type { Clock } from "#shared/tube/state.ts";

const days = (count: number): string => `${count} ${count === 1 ? "day" : "days"}`;

/** "84 days, since Fri 14 Aug 2026"; of a rough date the most that it can be: "up to 112 days, since March 2026". */
export function catheterWords(age: Age, { since }: Clock): string {
  if (!age.known) return "cannot tell: nobody knows since when it is in";
  return `${age.exact ? "" : "up to "}${days(age.days)}, since ${printWhen(since)}`;
}

/** "84 days, punctured Fri 14 Aug 2026"; of a rough or unknown date the least that it must be. */
export function tractWords(age: Age, { since }: Clock): string {
  if (!age.known) return "cannot tell: neither the puncture nor the tube is dated";
  if (since.precision === "unknown")
    return `at least ${days(age.days)}, as the first tube known in it; the puncture is undated`;
  return `${age.exact ? "" : "at least "}${days(age.days)}, punctured ${printWhen(since)}`;
}

/** What the row says of a tract of this age, if the tube came out now; null where it has no row. */
export function immatureWords(age: Age, immatureUnder: number | null): string | null {
  if (immatureUnder === null) return null;
  const row = `the row's limit is ${days(immatureUnder)}`;
  if (!age.known) return `Cannot tell whether the tract is mature: ${row}.`;
  return age.days < immatureUnder
    ? `Immature: ${row}. If access is lost now, it becomes a new puncture.`
    : `Past the row's limit for an immature tract, ${days(immatureUnder)}.`;
}

/** "out for 3 hours"; "out for up to 9 hours, the time is not known"; that it cannot be told. */
export function outSinceWords(out: OutSince): string {
  if (out === null) return "out since an unknown day";
  const hours = `${out.hours} ${out.hours === 1 ? "hour" : "hours"}`;
  return out.exact ? `out for ${hours}` : `out for up to ${hours}, the time is not known`;
}
