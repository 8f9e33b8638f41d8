import * as z from "zod";
import { protocolSchema } from "#shared/protocol/protocol.ts";
import type { LeafValue } from "#shared/protocol/rows/leaf.ts";
import { lengthSchema } from "#shared/size/length-schema.ts";

/** What a row is made of: places, groups of places, and lists of groups. */
export type FieldShape =
  | {
      readonly made: "leaf";
      readonly name: string;
      readonly value: LeafValue;
      /** What a blank one is; undefined where it has to be filled. */
      readonly blank: null | readonly [] | undefined;
    }
  | { readonly made: "group"; readonly name: string; readonly fields: readonly FieldShape[] }
  | {
      readonly made: "list";
      readonly name: string;
      readonly fields: readonly FieldShape[];
      readonly atMost: number | null;
    };

/** Rows of one sort: one that stands alone, or a list of them. */
export type RowSort = {
  /** "balloon", "outputRows.dry". */
  readonly path: string;
  readonly isList: boolean;
  /** False where the table cannot do without it. */
  readonly mayBeNone: boolean;
  readonly fields: readonly FieldShape[];
  readonly schema: z.ZodType;
};

/** What a version says of itself, beside its rows. */
const head = [
  "shape",
  "version",
  "approved",
  "ages",
] as const satisfies readonly (keyof typeof protocolSchema.shape)[];

type Schema = z.core.$ZodType;

const bound = (figure: number | null): number | null =>
  figure === null || Math.abs(figure) >= Number.MAX_SAFE_INTEGER ? null : figure;

const bounds = ({ minValue, maxValue }: z.ZodNumber) => ({ least: bound(minValue), most: bound(maxValue) });

/** How many a list holds, by the checks of its schema. */
function counts(list: z.ZodArray): { readonly atLeast: number; readonly atMost: number | null } {
  let atLeast = 0;
  let atMost: number | null = null;
  for (const check of list.def.checks ?? []) {
    const { def } = check._zod;
    if (def.check === "min_length") atLeast = (def as z.core.$ZodCheckMinLengthDef).minimum;
    if (def.check === "max_length") atMost = (def as z.core.$ZodCheckMaxLengthDef).maximum;
  }
  return { atLeast, atMost };
}

const untold = (name: string): Error => new Error(`no form is known for "${name}" of a row`);

function ofList(list: z.ZodArray, name: string): LeafValue {
  const { element } = list;
  const { atLeast, atMost } = counts(list);
  if (element instanceof z.ZodEnum) return { is: "some of", options: element.options.map(String), atLeast };
  if (element instanceof z.ZodNumber) return { is: "numbers", ...bounds(element), atLeast };
  if (element instanceof z.ZodString)
    return { is: "list of words", longest: longest(element, name), atLeast, atMost };
  throw untold(name);
}

function longest(text: z.ZodString, name: string): number {
  if (text.maxLength === null) throw untold(name);
  return text.maxLength;
}

function leafValue(schema: Schema, name: string): LeafValue {
  if (schema === lengthSchema) return { is: "length" };
  if (schema instanceof z.ZodNumber)
    return { is: schema.isInt ? "whole number" : "number", ...bounds(schema) };
  if (schema instanceof z.ZodString) return { is: "words", longest: longest(schema, name) };
  if (schema instanceof z.ZodBoolean) return { is: "yes or no" };
  if (schema instanceof z.ZodEnum) return { is: "one of", options: schema.options.map(String) };
  if (schema instanceof z.ZodArray) return ofList(schema, name);
  throw untold(name);
}

function shapeOf(name: string, schema: Schema): FieldShape {
  if (schema instanceof z.ZodObject) return { made: "group", name, fields: fieldsOf(schema) };
  if (schema instanceof z.ZodArray && schema.element instanceof z.ZodObject)
    return { made: "list", name, fields: fieldsOf(schema.element), atMost: counts(schema).atMost };
  if (schema instanceof z.ZodNullable)
    return { made: "leaf", name, value: leafValue(schema.unwrap(), name), blank: null };
  const value = leafValue(schema, name);
  return { made: "leaf", name, value, blank: "atLeast" in value && value.atLeast === 0 ? [] : undefined };
}

const fieldsOf = (schema: z.ZodObject): readonly FieldShape[] =>
  Object.entries(schema.shape).map(([name, field]) => shapeOf(name, field));

const isRow = (schema: Schema): schema is z.ZodObject =>
  schema instanceof z.ZodObject && "source" in schema.shape;

/** A row is the shallowest object that says its source. */
function sortsIn(schema: Schema, path: string): readonly RowSort[] {
  const mayBeNone = schema instanceof z.ZodNullable;
  const inner = mayBeNone ? schema.unwrap() : schema;
  if (isRow(inner)) return [{ path, isList: false, mayBeNone, fields: fieldsOf(inner), schema: inner }];
  if (inner instanceof z.ZodArray && isRow(inner.element))
    return [{ path, isList: true, mayBeNone: true, fields: fieldsOf(inner.element), schema: inner.element }];
  if (inner instanceof z.ZodObject)
    return Object.entries(inner.shape).flatMap(([name, field]) =>
      sortsIn(field as Schema, path === "" ? name : `${path}.${name}`),
    );
  throw untold(path);
}

/** Every sort of row that the table has, in the order of its schema. */
export const rowSorts: readonly RowSort[] = sortsIn(
  protocolSchema.omit(
    Object.fromEntries(head.map((name) => [name, true])) as Record<(typeof head)[number], true>,
  ),
  "",
);

export const rowSort = (path: string): RowSort | undefined => rowSorts.find((sort) => sort.path === path);
