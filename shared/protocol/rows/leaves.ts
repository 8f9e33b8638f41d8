import type { Leaf } from "#shared/protocol/rows/leaf.ts";
import { printLeaf } from "#shared/protocol/rows/print-leaf.ts";
import type { FieldShape } from "#shared/protocol/rows/row-sorts.ts";

/** Anything with named parts, as a row is before its schema has seen it. */
export type RowData = Readonly<Record<string, unknown>>;

/** A leaf with what a blank one is, and what stands in it. */
export type StandingLeaf = Leaf & { readonly text: string };

/** What stands in a part of a row; nothing where there is no row. */
const partOf = (data: unknown, name: string): unknown =>
  typeof data === "object" && data !== null ? Reflect.get(data, name) : undefined;

type List = Extract<FieldShape, { readonly made: "list" }>;

/** How many places of a list are shown: those that are filled, and those beyond that are asked for. */
function shownPlaces({ atMost }: List, filled: number, spare: number): number {
  return atMost === null ? filled + spare : Math.max(filled, Math.min(atMost, filled + spare));
}

/**
 * The leaves of a row in the order of its schema, each with what stands in it. `spare` is how many blank places follow the filled ones of
 * each list, so that one can be added.
 */
export function leavesOf(
  fields: readonly FieldShape[],
  data: unknown,
  spare: number,
): readonly StandingLeaf[] {
  return fields.flatMap((field): readonly StandingLeaf[] => {
    const part = partOf(data, field.name);
    const under = (path: string, inside: unknown, shapes: readonly FieldShape[]): StandingLeaf[] =>
      leavesOf(shapes, inside, spare).map((leaf) => ({ ...leaf, path: `${path}.${leaf.path}` }));
    if (field.made === "leaf") {
      const { name, value, blank } = field;
      return [{ path: name, value, mayBeBlank: blank !== undefined, text: printLeaf(value, part) }];
    }
    if (field.made === "group") return under(field.name, part, field.fields);
    const items: readonly unknown[] = Array.isArray(part) ? part : [];
    return Array.from({ length: shownPlaces(field, items.length, spare) }, (_, at) =>
      under(`${field.name}.${at + 1}`, items[at], field.fields),
    ).flat();
  });
}
