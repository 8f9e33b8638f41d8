import { describe, expect, it } from "vitest";
import { kindOf, type TubeKind, tubeKinds } from "#shared/tube/kind/kinds.ts";
import { troubleKinds } from "#shared/tube/vocabulary.ts";
import { exampleProtocol } from "./example.ts";
import { flagRaisedBy } from "./find-flag.ts";
import { tubeOutRow } from "./find-tube-out.ts";
import { sourceLines } from "./sources.ts";

/** Every `source` in the table, wherever it stands, with the path to it. */
function sourcesIn(value: unknown, path: string): [string, string][] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, inner]): [string, string][] =>
    name === "source" ? [[path, String(inner)]] : sourcesIn(inner, `${path}.${name}`),
  );
}

describe("the rows of the example table beside its intervals", () => {
  it.each(sourcesIn(exampleProtocol, "protocol"))("%s names sources that are listed: %s", (_path, source) => {
    const names = source.match(/\d+|CP|MEM/g) ?? [];
    expect(names.length).toBeGreaterThan(0);
    expect(sourceLines(source)).toHaveLength(names.length);
  });

  it.each([
    ["abscess drain", "5-10 mL x 1-3 a day"],
    ["pancreatic drain", "10-20 mL x 3 a day"],
    ["lymphocele drain", "5-10 mL x 1 a day"],
    ["chest tube", "10-20 mL x 2-4 a day"],
    ["cholecystostomy", "5-10 mL x 1-2 a day, forward only, not aspirated"],
    ["nephroureteral catheter", "up to 5 mL, as ordered, not aspirated"],
    ["jejunostomy", "20-30 mL"],
    ["surgical drain", undefined],
    ["ureteral stent", undefined],
  ] as const)("the flush of a %s: %s; undefined is no row", (kind, order) => {
    expect(exampleProtocol.flush.find((row) => row.kind === kind)?.order).toBe(order);
  });

  it("the tip has a date of its own in a gastrojejunostomy, and in no other", () => {
    expect(exampleProtocol.tips).toEqual([
      { kind: "gastrojejunostomy", within: 0, again: null, source: "CP" },
    ]);
  });

  it("a kind is measured by the rows that its data names, or by none", () => {
    const { outputRows } = exampleProtocol;
    const named = [
      ...outputRows!.dry,
      ...outputRows!.low,
      ...outputRows!.high,
      ...outputRows!.sessions,
      outputRows!.chestTube!,
    ].flatMap(({ kinds }) => kinds);
    for (const kind of new Set(named)) expect(kindOf(kind).output).not.toBeNull();
    const outside = tubeKinds.filter((kind) => !kindOf(kind).outside);
    expect(named.filter((kind) => outside.includes(kind))).toEqual([]);
  });
});

describe("tube out", () => {
  it.each([
    ["nephrostomy", "nephrostomy"],
    ["cholecystostomy", "external or internal-external biliary, cholecystostomy"],
    ["venting gastrostomy", "gastrostomy, gastrojejunostomy, jejunostomy"],
    ["suprapubic catheter", "suprapubic"],
    ["chest tube", "chest tube"],
    ["surgical drain", "collection drain"],
    ["ureteral stent", undefined],
    ["cecostomy", undefined],
    ["other", undefined],
  ] as [TubeKind, string | undefined][])("a %s: row %s; undefined is no row", (kind, id) => {
    expect(tubeOutRow(exampleProtocol, kind, "out")?.id).toBe(id);
  });

  it("pulled back only is the same for any kind", () => {
    expect(tubeOutRow(exampleProtocol, "other", "part out")?.untilReached).toBe("secure as it is, ring");
  });
});

describe("red flags", () => {
  it.each([
    ["bled", true, "emergency services"],
    ["bled", false, "same day"],
    ["infected", true, "same day"],
    ["infected", false, "next working day"],
    ["leaking", true, "same day"],
    ["leaking", false, undefined],
    ["blocked", true, "same day"],
    ["broken", true, undefined],
  ] as const)("%s, grave %s: %s; undefined is no row", (kind, grave, level) => {
    expect(flagRaisedBy(exampleProtocol, { kind, grave })?.level).toBe(level);
  });

  it("are raised by each trouble in one way at most", () => {
    for (const trouble of troubleKinds)
      for (const grave of [true, false]) {
        const raised = exampleProtocol.redFlags.filter(({ raisedBy }) =>
          raisedBy.some((by) => by.trouble === trouble && by.grave === grave),
        );
        expect(raised.length).toBeLessThanOrEqual(1);
      }
  });
});
