import type { BoreProfile, Deciding } from "#shared/fit/bore-profile.ts";
import type { Inner } from "#shared/fit/profile-inner.ts";
import type { Segment } from "#shared/fit/profile-segments.ts";
import type { Length } from "#shared/size/length.ts";
import { printBoth, printLength } from "#shared/size/print-length.ts";

const both = (width: number): string => printBoth(width as Length, "in", "mm");

/** The middle with what it may be off by, where that is known. */
function withSpread(least: number, most: number): string {
  const off = (most - least) / 2;
  return off === 0 ? both(least) : `${both(least + off)} ± ${printLength(off as Length, "mm")}`;
}

/** The inside of a part as a figure: "0.035 in (0.889 mm)", "0.035 in (0.889 mm) by label, reported", "unknown". */
export function innerWords(inner: Inner): string {
  switch (inner.known) {
    case "measured":
      return sure(withSpread(inner.least, inner.most), inner.certainty);
    case "by label":
      return sure(`${both(inner.width)} by label`, inner.certainty);
    case "closed":
      return sure("closed", inner.certainty);
    case "unknown":
      return "unknown";
  }
}

const sure = (said: string, certainty: string): string =>
  certainty === "confirmed" ? said : `${said}, ${certainty}`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The taper is drawn between two places and has no figure of its own. */
export const namedParts = (segments: readonly Segment[]): readonly Segment[] =>
  segments.filter(({ part }) => part !== "taper");

/** Every figure of the drawing as a line each; one for all where the label alone speaks, which it does for the whole path. */
export function figureWords({ segments }: BoreProfile): readonly string[] {
  const named = namedParts(segments);
  const [first] = named;
  const labeled = named.every(({ start }) => start.inner.known === "by label");
  return labeled && first !== undefined
    ? [`Whole path ${innerWords(first.start.inner)}`]
    : named.map(partWords);
}

/** "End hole 0.035 in (0.889 mm)". */
export const partWords = ({ part, start }: Segment): string => `${capital(part)} ${innerWords(start.inner)}`;

/** What the ring shows. A label speaks for the whole path, so its ring is cut nowhere in particular. */
export const ringWords = ({ place }: Deciding): string =>
  place === "whole path" ? "Ring: the size on the label, to scale" : `Ring: at the ${place}, to scale`;

/** What goes through, with its width: "Wire 0.035 in (0.889 mm)". */
export function goesWords({ wire }: BoreProfile, name: string): string {
  return wire === null ? `${capital(name)}: size unknown` : `${capital(name)} ${both(wire.width)}`;
}
