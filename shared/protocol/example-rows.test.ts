import { describe, expect, it } from "vitest";
import { rungs } from "#shared/call/rungs.ts";
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

  it("anchors of a gastrostomy and the suture of a tunnelled pleural catheter are due out (common practice, no source)", () => {
    const days = { from: 10, to: 14, source: "CP" };
    expect(exampleProtocol.anchors.toSorted((a, b) => (a.kind < b.kind ? -1 : 1))).toEqual([
      { kind: "balloon gastrostomy", holds: "anchors", ...days },
      { kind: "gastrojejunostomy", holds: "anchors", ...days },
      { kind: "loop gastrostomy", holds: "anchors", ...days },
      { kind: "tunnelled pleural catheter", holds: "suture", from: 14, to: 21, source: "CP" },
      { kind: "venting gastrostomy", holds: "anchors", ...days },
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

describe("questions of a call", () => {
  const { questions, rungs: ways, hours } = exampleProtocol.calls!;

  it("and what follows attempts, and the hours, are common practice: each row says so", () => {
    for (const { source } of [...questions, ...ways, ...hours]) expect(source).toBe("CP");
  });

  it("about output, a leak, the skin or the way out are none for a tube that lies wholly inside", () => {
    const ofTubes = questions.filter(({ of }) => of === "each tube");
    const spokenOf = ofTubes.filter(
      ({ roles: named, kinds, heldBy }) =>
        (named.length === 0 || named.includes("internal")) && kinds.length === 0 && heldBy.length === 0,
    );
    expect(spokenOf.map(({ id }) => id)).toEqual(["knows of it"]);
    const inside = tubeKinds.filter((kind) => kindOf(kind).role === "internal");
    expect(inside.length).toBeGreaterThan(0);
    for (const { id, kinds } of ofTubes)
      expect(
        kinds.filter((kind) => inside.includes(kind)),
        id,
      ).toEqual([]);
    expect(
      questions.filter(
        ({ thenRecord, roles: named }) => thenRecord === "output" && named.includes("internal"),
      ),
    ).toEqual([]);
  });

  it("about the water of a balloon are asked only of what is held by one", () => {
    const [water, ...more] = questions.filter(
      ({ thenRecord, redFlag }) => thenRecord === "balloon water" || redFlag === "balloon loss",
    );
    expect(more).toEqual([]);
    expect(water).toMatchObject({ of: "each tube", heldBy: ["balloon"] });
  });

  it("open each red flag of the table at least once, and none that it has not", () => {
    const opened = questions.flatMap(({ redFlag, instead }) => [
      ...(redFlag === null ? [] : [redFlag]),
      ...instead.map((other) => other.redFlag),
    ]);
    const flags = exampleProtocol.redFlags.map(({ id }) => id);
    expect([...new Set(opened)].toSorted()).toEqual(flags.toSorted());
  });

  it("that are emergencies are asked of the patient first", () => {
    const first = questions.slice(0, 3).map(({ redFlag }) => redFlag);
    expect(exampleProtocol.redFlags.filter(({ id }) => first.includes(id)).map(({ level }) => level)).toEqual(
      ["emergency services", "emergency services", "emergency services"],
    );
    const ofTubes = questions.findIndex(({ of }) => of === "each tube");
    expect(questions.slice(0, ofTubes).every(({ of }) => of === "the patient")).toBe(true);
  });

  it("are followed by each way once, a physician last", () => {
    expect(ways.map(({ rung }) => rung)).toEqual([...rungs]);
    expect(rungs.at(-1)).toBe("physician");
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
