/**
 * The drawing's own units; the page stretches it in both directions alike, so that across stays to scale. The side view stands
 * left, with room before the hub for the wire and after the tip for a wire that comes out; the ring stands right of it.
 */
export const WIDTH = 660;
export const HEIGHT = 168;
export const MIDDLE = HEIGHT / 2;
/** Where the side view ends. */
export const SIDE = 480;
export const RING_AT = WIDTH - HEIGHT / 2;

const BEFORE = 56;
const AFTER = 48;
/** Over and under the widest part. */
const MARGIN = 8;

export type Scale = {
  /** Of a position from 0 at the hub to 1 at the tip. */
  readonly along: (position: number) => number;
  /** Of a width in units of Length. One scale for every width, so that what is wider is drawn wider. */
  readonly across: (width: number) => number;
};

const rounded = (value: number): number => Math.round(value * 100) / 100;

export const scaleOf = (across: number): Scale => ({
  along: (position) => rounded(BEFORE + position * (SIDE - BEFORE - AFTER)),
  across: (width) => rounded((width / across) * (HEIGHT - 2 * MARGIN)),
});

/** The same place in percent of the drawing's width, for words that stand over it. */
export const percentOf = (x: number): string => `${rounded((x / WIDTH) * 100)}%`;
