import { clockText, type Instant, turnOf, type Zone } from "#shared/day/instant.ts";

/** An hour over which clocks go back comes twice that night: which is meant is asked, and how the other is typed. */
export function hourTwice(at: Instant, where: Zone): string | null {
  switch (turnOf(at, where)) {
    case null:
      return null;
    case "earlier":
      return `${clockText(at, where)} comes twice that night: the earlier was taken. Type "later" after it for the other.`;
    case "later":
      return `${clockText(at, where)} comes twice that night: the later was taken.`;
  }
}
