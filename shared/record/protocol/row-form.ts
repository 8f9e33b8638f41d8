import type { Refusal } from "#shared/errors/refusal.ts";
import { blankPlaces, missingLeaves } from "#shared/protocol/rows/blank-places.ts";
import { type LeafSpec, placesOf } from "#shared/protocol/rows/leaf.ts";
import type { RowSpec } from "#shared/protocol/rows/rows-of.ts";
import type { FieldSpecs } from "#shared/record/field-spec.ts";
import { form } from "#shared/record/form.ts";
import { leafField } from "#shared/record/protocol/leaf-field.ts";

/** What was read in each place of a row, by its path; undefined is blank. */
export type RowValues = Readonly<Record<string, unknown>>;

/** The row as the page found it, as plain data. */
export type RowContext = Pick<RowSpec, "leaves" | "stands" | "mayBeNone">;

const isFigure = ({ path, value }: LeafSpec): boolean => placesOf(path).length === 0 && "least" in value;

/** Of a row that stands the figures come first: they are what is changed. A new one begins with whose row it is. */
function inOrder({ leaves, stands }: RowContext): readonly LeafSpec[] {
  if (!stands) return leaves;
  return [...leaves.filter(isFigure), ...leaves.filter((leaf) => !isFigure(leaf))];
}

const fields = (context: RowContext): FieldSpecs<RowValues> =>
  Object.fromEntries(inOrder(context).map((leaf) => [leaf.path, leafField(leaf)]));

/** What has to be filled. A row that stands and is left wholly blank is "no row"; a new one says nothing. */
function check(values: RowValues, { leaves, stands, mayBeNone }: RowContext): readonly Refusal[] {
  const filled = Object.fromEntries(
    leaves.map(({ path }) => [path, values[path] === undefined ? "" : "filled"]),
  );
  if (!blankPlaces(leaves, filled).has("")) return missingLeaves(leaves, filled);
  if (!stands) return [{ code: "nothing-said" }];
  return mayBeNone ? [] : missingLeaves(leaves, filled);
}

/** Change one row of the draft, or add one: a field for each of its places, made from what the row says of itself. */
export const rowForm = form({ fields, check, entry: (values: RowValues) => values });
