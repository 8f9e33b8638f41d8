import { describe, expect, it } from "vitest";
import * as z from "zod";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { protocolSchema } from "#shared/protocol/protocol.ts";
import { leafLabel, namedLeaves } from "#shared/words/protocol/leaf-words.ts";
import { rowNames } from "#shared/words/protocol/row-names.ts";
import { changeRow } from "./change-row.ts";
import { leavesOf } from "./leaves.ts";
import { leavesIn } from "./read-row.ts";
import { rowSorts } from "./row-sorts.ts";
import { listsOfRows, rowAt, rowsOf, typedRow } from "./rows-of.ts";

const head = ["shape", "version", "approved", "ages"];

/** Every place in which a figure or a word of a version stands, found without the schemas: paths without the numbers of lists. */
function standing(value: unknown, path: readonly string[] = []): readonly string[] {
  if (Array.isArray(value) && value.some((item) => typeof item === "object"))
    return value.flatMap((item) => standing(item, path));
  if (value === null || Array.isArray(value) || typeof value !== "object") return [path.join(".")];
  return Object.entries(value).flatMap(([name, inside]) => standing(inside, [...path, name]));
}

type Json = {
  readonly properties?: Readonly<Record<string, Json>>;
  readonly items?: Json;
  readonly anyOf?: readonly Json[];
};

/** The same of the schemas, by what another reader makes of them: JSON Schema. */
function inSchema(schema: Json, path: readonly string[] = []): readonly string[] {
  const inner =
    schema.anyOf?.find((one) => one.properties !== undefined || one.items !== undefined) ?? schema;
  const shape = inner.items?.properties === undefined ? inner : inner.items;
  if (shape.properties === undefined) return [path.join(".")];
  return Object.entries(shape.properties).flatMap(([name, inside]) => inSchema(inside, [...path, name]));
}

const isRow = (path: string): boolean => !head.includes(path.split(".")[0] ?? "");
const withoutNumbers = (path: string): string => path.replace(/\.\d+(?=\.)/g, "");

/** Every leaf of every sort, with one place in each of its lists. */
const allLeaves = rowSorts.flatMap((sort) => {
  const texts = Object.fromEntries(leavesOf(sort.fields, null, 1).map(({ path }) => [path, ""] as const));
  return leavesIn(sort, texts).map((leaf) => ({
    sort,
    leaf,
    path: withoutNumbers(`${sort.path}.${leaf.path}`),
  }));
});
const told = [...new Set(allLeaves.map(({ path }) => path))].toSorted();

describe("the rows of a version", () => {
  it("tell every place of the schemas", () => {
    const schema = z.toJSONSchema(protocolSchema, { unrepresentable: "any" }) as Json;
    expect(told).toEqual([...new Set(inSchema(schema).filter(isRow))].toSorted());
    expect(told.length).toBeGreaterThan(100);
  });

  it("tell every figure and word that stands in the example, where it stands", () => {
    const found = rowsOf(exampleProtocol).flatMap(({ path, leaves }) =>
      leaves.map((leaf) => withoutNumbers(`${path}.${leaf.path}`)),
    );
    const stands = standing(exampleProtocol).filter(isRow);
    // A list of objects that is empty in each row of the example has no place in it.
    const isOfPlaces = (path: string): boolean => told.some((one) => one.startsWith(`${path}.`));
    expect([...new Set(stands)].filter((path) => !found.includes(path) && !isOfPlaces(path))).toEqual([]);
    for (const path of new Set(found))
      expect(found.filter((one) => one === path).length, path).toBe(
        stands.filter((one) => one === path).length,
      );
  });

  it.each(told)("have words for %s", (path) => {
    const { sort, leaf } = allLeaves.find((one) => one.path === path)!;
    expect(leafLabel(sort.path, leaf.path)).not.toBeNull();
  });

  it("have no words for a place that is not there, and a name for each sort and no other", () => {
    expect(namedLeaves.leaves.filter((path) => !told.includes(path))).toEqual([]);
    expect(namedLeaves.places.filter((path) => !told.some((one) => one.startsWith(`${path}.`)))).toEqual([]);
    expect(Object.keys(rowNames).toSorted()).toEqual(rowSorts.map(({ path }) => path).toSorted());
  });

  it("stand at addresses of their own, and are plain data", () => {
    const rows = rowsOf(exampleProtocol);
    expect(new Set(rows.map(({ address }) => address)).size).toBe(rows.length);
    expect(JSON.parse(JSON.stringify(rows))).toEqual(rows);
  });

  it.each([
    ["intervals/nephrostomy", "target", "Target, days", "77"],
    ["flush/nephrostomy", "order", "Order", "up to 5 mL, as ordered, not aspirated"],
    ["outputRows.dry/1", "onlyWayOut", "The same where it is the only way out", "on call now"],
    ["passage", "clearance", "A wire is thinner than a measured bore by, with its unit", "0.001 in"],
    [
      "passage",
      "outsideTolerance.device",
      "Any other outside is thicker or thinner by, with its unit",
      "0.33 mm",
    ],
    ["calls.trialOn", "days", "On days", "1, 2, 7, 14"],
    ["intervals/cholecystostomy", "byRoute.2.immatureUnder", "Way 2: immature if out, under, days", "42"],
    ["bleeding", "rows.2.acts.1.source", "Class 2, act 1: source", "14"],
    ["redFlags/fever", "raisedBy.1.grave", "Raised by entry 1: grave", "yes"],
    ["calls.rungs/letter", "afterWorkingDays", "So many working days after what came before it", "1"],
    ["calls.hours/morning", "from", "From, full hour by the clinic's clock", "9"],
    ["calls.questions/fever", "instead.2.of", "Instead 2: if", "a tube is shut"],
    ["calls.questions/balloon water", "heldBy", "Held by, with commas between; blank is anything", "balloon"],
  ])("at %s say %s: %s %s", (address, path, label, text) => {
    expect(rowAt(exampleProtocol, address)?.leaves.find((leaf) => leaf.path === path)).toMatchObject({
      label,
      text,
    });
  });

  it("in a form have one blank place more in each list, up to as many as there can be", () => {
    const paths = (address: string) => rowAt(exampleProtocol, address)!.leaves.map(({ path }) => path);
    expect(paths("redFlags/fever").filter((path) => path.endsWith("trouble"))).toEqual([
      "raisedBy.1.trouble",
      "raisedBy.2.trouble",
    ]);
    expect(paths("intervals/cholecystostomy").filter((path) => path.endsWith("route"))).toHaveLength(2);
    expect(paths("bleeding").filter((path) => path.endsWith(".act"))).toEqual([
      "rows.1.acts.1.act",
      "rows.1.acts.2.act",
      "rows.2.acts.1.act",
      "rows.2.acts.2.act",
      "rows.2.acts.3.act",
      "rows.2.acts.4.act",
      "rows.3.acts.1.act",
    ]);
  });

  it.each([...rowsOf(exampleProtocol).map(({ address }) => address)])(
    "%s saved as it stands changes nothing",
    (address) => {
      const texts = typedRow(exampleProtocol, address);
      expect(changeRow(exampleProtocol, address, texts)).toEqual({
        ok: true,
        protocol: exampleProtocol,
        address,
      });
    },
  );

  it.each(listsOfRows)("%s has a blank row to add, and left blank it adds none", (address) => {
    const blank = rowAt(exampleProtocol, address)!;
    expect(blank).toMatchObject({ stands: false, mayBeNone: true });
    expect(blank.leaves.filter(({ text }) => text !== "")).toEqual([]);
    const texts = Object.fromEntries(blank.leaves.map(({ path }) => [path, ""]));
    expect(changeRow(exampleProtocol, address, texts)).toMatchObject({ ok: true, protocol: exampleProtocol });
  });

  it.each(["intervals/nobody", "outputRows.dry/9", "nothing", "balloon/1", ""])(
    "there is none at %j",
    (address) => {
      expect(rowAt(exampleProtocol, address)).toBeNull();
      expect(changeRow(exampleProtocol, address, {})).toEqual({
        ok: false,
        refusals: [{ code: "row-unknown", args: { text: address } }],
      });
    },
  );
});
