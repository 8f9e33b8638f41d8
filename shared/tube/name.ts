import { printLength } from "#shared/size/print-length.ts";
import { known } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "Left nephrostomy": side first, as a word; an unknown side is said. */
export function tubeTitle(tube: Pick<TubeState, "side" | "kind">): string {
  const kind = kindOf(tube.kind);
  const side = known(tube.side);
  if (side === undefined) return kind.sided ? `Side unknown: ${kind.name}` : capital(kind.name);
  return side === "not sided" ? capital(kind.name) : `${capital(side)} ${kind.name}`;
}

/** "Left nephrostomy (tube 2)": told apart from another of the same name. */
export const numberedTitle = (tube: Pick<TubeState, "side" | "kind" | "number">): string =>
  `${tubeTitle(tube)} (tube ${tube.number})`;

/** The title of each tube by its id, with its number where another of them has the same: tandem stents are two. */
export function titlesOf(
  tubes: readonly Pick<TubeState, "id" | "side" | "kind" | "number">[],
): ReadonlyMap<string, string> {
  const titles = tubes.map(tubeTitle);
  const shared = (title: string): boolean => titles.indexOf(title) !== titles.lastIndexOf(title);
  return new Map(
    tubes.map((tube) => [tube.id, shared(tubeTitle(tube)) ? numberedTitle(tube) : tubeTitle(tube)]),
  );
}

/** "8 F, locking loop", or "size unknown, locking loop". */
export function tubeDetail(tube: Pick<TubeState, "size" | "retention">): string {
  const size = known(tube.size);
  const retention = known(tube.retention);
  const about = tube.size.certainty === "estimated" ? "about " : "";
  return [size === undefined ? "size unknown" : about + printLength(size, "F"), retention]
    .filter(Boolean)
    .join(", ");
}

/** "Left nephrostomy, 8 F, locking loop". */
export const tubeName = (tube: TubeState): string => `${tubeTitle(tube)}, ${tubeDetail(tube)}`;

/** "Left nephrostomy (tube 2), 8 F, locking loop": where tubes stand beside each other. */
export const numberedName = (tube: TubeState): string => `${numberedTitle(tube)}, ${tubeDetail(tube)}`;
