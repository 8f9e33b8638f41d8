import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { otherRows } from "./other-rows.ts";

type Path = readonly (string | number)[];

/** Where figures and words of a version stand, apart from the intervals, which have a table of their own. */
function leaves(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value === "number" || typeof value === "string" || typeof value === "boolean") return [path];
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([name, inside]) => leaves(inside, [...path, name]));
}

const { shape, version, approved, ages, intervals, ...rows } = exampleProtocol;

/** The same with something else in one place. */
function otherwise(path: Path): Protocol {
  const copy = structuredClone(exampleProtocol);
  const last = path.at(-1) ?? "";
  const holder = path
    .slice(0, -1)
    .reduce<Record<string, unknown>>((at, name) => at[name] as Record<string, unknown>, copy as never);
  const was = holder[last];
  holder[last] =
    typeof was === "number" ? was + 1524 : typeof was === "boolean" ? !was : `${String(was)} or other`;
  return copy;
}

describe("the rows of a version in words", () => {
  it.each(leaves(rows).map((path) => [path.join(".")]))("tell %s", (path) => {
    expect(otherRows(otherwise(path.split(".")))).not.toEqual(otherRows(exampleProtocol));
  });

  it("say no row where the version has none, and keep a line for it", () => {
    const bare: Protocol = {
      ...exampleProtocol,
      outputRows: null,
      calls: null,
      bleeding: null,
      planning: null,
      balloon: null,
      flush: [],
      tips: [],
      redFlags: [],
      tubeOut: [],
    };
    const said = otherRows(bare).flatMap(({ rows: lines }) => lines.filter(({ says }) => says === "no row"));
    expect(said.map(({ word }) => word)).toEqual([
      "Other rows of output",
      "Other calls",
      "Red flag",
      "Tube out",
      "Flush as ordered",
      "Balloon water",
      "Tip",
      "Planning an exchange",
      "Bleeding risk",
    ]);
  });

  it("has a literal line of the fever and of a dry nephrostomy (example protocol)", () => {
    const lines = otherRows(exampleProtocol).flatMap(({ rows: some }) => some);
    expect(lines.find(({ word }) => word === "Fever")?.says).toBe("from 38 °C on (source CP)");
    expect(lines.find(({ word }) => word.startsWith("Dry: nephrostomy"))?.says).toBe(
      "nothing for 6 h: same day; the only way out, or no urine by any route: on call now (source CP)",
    );
  });
});
