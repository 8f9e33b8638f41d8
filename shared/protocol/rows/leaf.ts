type Bounds = { readonly least: number | null; readonly most: number | null };

/**
 * What stands in one place of a row. A length is typed with its unit; a list of words has one a line, lists of numbers and of choices have
 * commas between.
 */
export type LeafValue =
  | ({ readonly is: "whole number" | "number" } & Bounds)
  | { readonly is: "length" }
  | { readonly is: "words"; readonly longest: number }
  | { readonly is: "yes or no" }
  | { readonly is: "one of"; readonly options: readonly string[] }
  | { readonly is: "some of"; readonly options: readonly string[]; readonly atLeast: number }
  | ({ readonly is: "numbers"; readonly atLeast: number } & Bounds)
  | {
      readonly is: "list of words";
      readonly longest: number;
      readonly atLeast: number;
      readonly atMost: number | null;
    };

/** One place of a row as plain data, which a server may send to a browser. */
export type Leaf = {
  /** Names of fields with points between; places of a list count from 1: "byRoute.2.immatureUnder". */
  readonly path: string;
  readonly value: LeafValue;
  /** Whether blank says something by itself: "no row", or an empty list. */
  readonly mayBeBlank: boolean;
};

/** What is shown of a place: its words, and what stands in it as it would be typed; "" where nothing does. */
export type LeafSpec = Leaf & { readonly label: string; readonly text: string };

/** The places of lists in which a leaf stands, the outermost first: "rows.2" and "rows.2.acts.1" of "rows.2.acts.1.act". */
export function placesOf(path: string): readonly string[] {
  const parts = path.split(".");
  return parts.flatMap((part, at) => (/^\d+$/.test(part) ? [parts.slice(0, at + 1).join(".")] : []));
}

export const isIn = (path: string, place: string): boolean => place === "" || path.startsWith(`${place}.`);
