import type { When } from "#shared/day/when.ts";

/**
 * A date in figures that sort and that readWhen reads back: `2026-11-06`, `2026-11`, `2026`, `2026-11-14 to 2026-11-20`,
 * `~2026-11-06` (a span of one day), `unknown`. The end of a month in progress is not written.
 */
export function isoWhen(when: When): string {
  switch (when.precision) {
    case "day":
      return when.earliest;
    case "month":
      return when.earliest.slice(0, 7);
    case "year":
      return when.earliest.slice(0, 4);
    case "span":
      return when.earliest === when.latest ? `~${when.earliest}` : `${when.earliest} to ${when.latest}`;
    case "unknown":
      return "unknown";
  }
}
