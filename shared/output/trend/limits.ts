/**
 * What the figures behind an output are held to. None of it is a rule of the trade and none of it raises anything: these numbers say
 * only from where on a figure is told, and up to where.
 */

/** Under four days the table of Gilbert 1987 (A18) has no line, and no slope is told. */
export const LEAST_DAYS = 4;
/** A half-life and the shape of a fall are told from here on. With five days a 95 % interval exists for the first time. */
export const LEAST_FOR_SHAPE = 5;
/** Up to here, and without ties, S is held against its exact distribution; further on the bell curve is near enough. */
export const EXACT_UP_TO = 10;

/** An interval's level, and the point that cuts off half of the rest of a standard bell curve. */
export type Level = { readonly percent: number; readonly z: number };
/** 1.959964 leaves 2.5 % on each side (Abramowitz and Stegun 1964, table 26.1). */
export const LEVEL: Level = { percent: 95, z: 1.959964 };

/** "If unchanged" tells no span wider than this, none that ends later after the last day, and none of days gone silent. Practice, no source. */
export const WIDEST_SPAN_DAYS = 14;
export const HORIZON_DAYS = 28;
export const SILENT_DAYS = 3;
