import { describe, expect, it } from "vitest";
import type { TractAnswer } from "#shared/fit/exchange-plan.ts";
import { upsizeStep } from "#shared/fit/upsize-step.ts";
import { type WireLengthQuestion, wireLength } from "#shared/fit/wire-length.ts";
import { exampleBleeding, examplePlanning } from "#shared/protocol/example-planning.ts";
import { planDoubts } from "#shared/protocol/planning-rows.ts";
import type { Length } from "#shared/size/length.ts";
import { confirmed, type Fact, unknownFact } from "#shared/tube/certainty.ts";
import {
  bleedingLine,
  changedLine,
  dilatorLine,
  doubtWords,
  lengthLine,
  outsideWords,
  readyLines,
  releaseLines,
  stepLine,
  tractLine,
} from "#shared/words/exchange-plan.ts";
import { cm, F } from "#tests/factories/coaxial.ts";
import { shelfType } from "#tests/factories/shelf-type.ts";
import { estimated, inch, reported } from "#tests/factories/tube-inside.ts";

describe("the length of the wire", () => {
  const line = (wire: Fact<Length>, asked: Partial<WireLengthQuestion> = {}): string =>
    lengthLine(
      wireLength({
        wire,
        fullLength: confirmed(cm(25)),
        externalLength: confirmed(cm(5)),
        devices: [confirmed(cm(40))],
        row: examplePlanning?.wire ?? null,
        ...asked,
      }),
    );
  // 20 + 10 to 20 + 40 + 10 = 80 to 90.
  const sum =
    "needed 80 to 90 cm (20 cm inside + 10 to 20 cm beyond the tip + 40 cm longest device + 10 cm to hold)";

  it("shows its sum", () => {
    expect(line(confirmed(cm(145)))).toBe(`Long enough: 145 cm; ${sum}.`);
    expect(line(confirmed(cm(79.5)))).toBe(`Too short by 0.5 cm: 79.5 cm; ${sum}.`);
    expect(line(confirmed(cm(85)))).toBe(`Doubt: 85 cm; ${sum}.`);
    expect(line(reported(cm(145)))).toBe(`Doubt: 145 cm; ${sum}. A length in the sum is reported.`);
  });

  it("tells one figure where the row has one", () => {
    const row = { beyondTipCm: { from: 10, to: 10 }, gripCm: 10, source: "CP" };
    expect(line(confirmed(cm(80)), { row })).toBe(
      "Long enough: 80 cm; needed 80 cm (20 cm inside + 10 cm beyond the tip + 40 cm longest device + 10 cm to hold).",
    );
  });

  it("names what is missing, and asks where more is outside than there is", () => {
    expect(line(unknownFact)).toBe("Cannot tell: record the length of the wire.");
    expect(line(unknownFact, { fullLength: unknownFact, row: null })).toBe(
      "Cannot tell: record the length of the wire and the full length of the tube in place; the clinic's protocol has no row for the length of a wire.",
    );
    expect(line(confirmed(cm(145)), { row: null })).toBe(
      "Cannot tell: the clinic's protocol has no row for the length of a wire.",
    );
    expect(line(confirmed(cm(145)), { externalLength: confirmed(cm(26)) })).toBe(
      "Cannot tell: 26 cm outside is more than its full length of 25 cm. Check both.",
    );
  });
});

describe("the step", () => {
  const row = examplePlanning?.upsize ?? null;
  const line = (from: Fact<Length>, to: Fact<Length>, by = row): string => stepLine(upsizeStep(from, to, by));
  it.each([
    [10, "Step of 2 F, from 8 F to 10 F: within the usual 2 F of the row."],
    [
      12,
      "Step of 4 F, from 8 F to 12 F: over the usual 2 F, not over the 4 F from which the row asks for a note.",
    ],
    [14, "Step of 6 F, from 8 F to 14 F: over 4 F, for which the row asks for a note."],
    [8, "No step: 8 F again."],
    [7, "No upsize: 8 F to 7 F is a step down."],
  ])("8 F to %d F", (to, text) => {
    expect(line(confirmed(F(8)), confirmed(F(to)))).toBe(text);
  });

  it("says that a size is not confirmed, in each of its lines", () => {
    for (const to of [10, 12, 14])
      expect(line(estimated(F(8)), confirmed(F(to)))).toMatch(/\. A size in it is not confirmed\.$/);
  });

  it("names what is missing", () => {
    expect(line(unknownFact, confirmed(F(8)))).toBe("Cannot tell: record the size of the tube in place.");
    expect(line(unknownFact, unknownFact, null)).toBe(
      "Cannot tell: record the size of the tube in place and size of the tube to come; the clinic's protocol has no row for the step.",
    );
    expect(line(confirmed(F(8)), confirmed(F(10)), null)).toBe(
      "Cannot tell: the clinic's protocol has no row for the step.",
    );
  });
});

it("dilators: those between, and one above", () => {
  const dilator = (size: number) => shelfType({ name: `Dilator ${size} F`, sort: "dilator" });
  expect(dilatorLine(null)).toBeNull();
  expect(dilatorLine({ between: [10, 11, 12].map(dilator), above: dilator(14) })).toBe(
    "On the shelf: Dilator 10 F, Dilator 11 F and Dilator 12 F; one above: Dilator 14 F.",
  );
  expect(dilatorLine({ between: [], above: null })).toBe(
    "None on the shelf up to the new size; none above it.",
  );
});

it.each<[Partial<TractAnswer>, string]>([
  [
    { maturity: "immature", age: 10 },
    "Immature tract: tract at least 10 days old, under the 14 days of the row. If access is lost this becomes a new puncture.",
  ],
  [
    { maturity: "neither", age: 20 },
    "Tract at least 20 days old: past the 14 days under which the row calls it immature, not yet the age from which it calls it mature. If access is lost this becomes a new puncture.",
  ],
  [{ maturity: "mature", age: 28 }, "Tract at least 28 days old: mature by the row."],
  [
    { maturity: "no row", age: 1, immatureUnder: null },
    "Tract at least 1 day old. The clinic's protocol has no row for when this tract is mature: cannot tell. If access is lost this becomes a new puncture.",
  ],
  [
    { maturity: "no row", age: null, immatureUnder: null },
    "Age of the tract unknown. The clinic's protocol has no row for when this tract is mature: cannot tell. If access is lost this becomes a new puncture.",
  ],
  [
    { maturity: "cannot tell", age: null },
    "Cannot tell whether the tract is mature: the day of the puncture is unknown; the row asks for 14 days. If access is lost this becomes a new puncture.",
  ],
])("the tract: %j", (said, text) => {
  expect(
    tractLine({ maturity: "mature", age: 0, immatureUnder: 14, bleeding: [], asks: null, ...said }),
  ).toBe(text);
});

it("both classes of bleeding, each with its figures and its source", () => {
  expect(exampleBleeding?.rows.map(bleedingLine)).toEqual([
    "Class low (exchange of a gastrostomy, biliary, nephrostomy or abscess tube): INR at most 2 to 3, platelets at least 20 x 10⁹/L, no routine labs unless on warfarin or heparin or with a bleeding history (source 14).",
    "Class high (new biliary, nephrostomy or gastrostomy access, cholecystostomy, deep abscess drain): INR at most 1.5 to 1.8, platelets at least 50 x 10⁹/L (source 14).",
  ]);
});

it("how the old tube is let go", () => {
  const [loop] = examplePlanning?.release ?? [];
  if (loop === undefined) throw new Error("the example lets a loop go");
  expect(releaseLines({ release: loop, notOverWire: null })).toEqual([
    "Let go: release the string at the hub, straighten the loop over the wire; the string is looked for before the tube is pulled.",
    "Must come out with it: the loop, straight, and all of the string.",
  ]);
  expect(releaseLines({ release: { ...loop, comesOut: null }, notOverWire: null })).toHaveLength(1);
  expect(releaseLines({ release: "no row", notOverWire: null })).toEqual([
    "The clinic's list has no row for how this is let go.",
  ]);
  const inside = { kinds: ["ureteral stent" as const], says: "wholly inside", source: "CP" };
  expect(releaseLines({ release: "retention unknown", notOverWire: inside })).toEqual([
    "Not exchanged over a wire from the skin: wholly inside.",
    "What holds the tube in place is unknown: cannot tell how it is let go. Record it.",
  ]);
});

it("the sizes next to it", () => {
  const drain = (name: string) => shelfType({ name, sort: "tube" });
  expect(
    readyLines({
      below: { size: F(6), types: [] },
      above: { size: F(10), types: [drain("Drain 10 F"), drain("Long 10 F")] },
      wires: [],
    }),
  ).toEqual(["The size below, 6 F: none on the shelf.", "The size above, 10 F: Drain 10 F and Long 10 F."]);
  const none = { size: null, types: [] };
  expect(readyLines({ below: none, above: none, wires: [] })[0]).toBe(
    "The size below: cannot tell, the size to come is unknown or there is no row.",
  );
});

it("facts that are others now", () => {
  expect(changedLine([])).toBeNull();
  expect(changedLine(["size", "takes", "retention"])).toBe(
    "This plan was checked on other facts of the tube in place. Changed since: size, what wire it takes and what holds it. Below is how it stands now; plan it again to keep that.",
  );
});

it("every doubt has words of its own", () => {
  expect(new Set(planDoubts.map((doubt) => doubtWords[doubt])).size).toBe(planDoubts.length);
});

it("an outside is told in inches of a wire, else in French", () => {
  expect(outsideWords({ sort: "wire", outside: confirmed(inch(0.035)) })).toBe("0.035 in");
  expect(outsideWords({ sort: "tube", outside: confirmed(F(8)) })).toBe("8 F");
  expect(outsideWords({ sort: "tube", outside: unknownFact })).toBe("size unknown");
});
