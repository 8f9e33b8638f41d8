import { describe, expect, it } from "vitest";
import type { TractOut } from "#shared/call/tube-out.ts";
import { exampleTubeOut } from "#shared/protocol/example-tube-out.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { outRowLines, sizesLine, slowLine, tractOutLine } from "./tube-out.ts";

const ages = { immatureUnder: 14, matureFrom: 28, inHospitalUnder: null, notRemovedBefore: null };
const row = exampleTubeOut.find(({ id }) => id === "nephrostomy") ?? null;
const partly = exampleTubeOut.find(({ out }) => out === "part out") ?? null;

describe("what the rows say of a tube that is out, in words", () => {
  it("the tract against its row's ages", () => {
    expect(tractOutLine({ age: 9, maturity: "immature", first: "immature", unknown: [] }, { ages })).toBe(
      "Immature tract: tract at least 9 days old, under the 14 days of the row. If access is lost this becomes a new puncture.",
    );
    expect(
      tractOutLine(
        { age: null, maturity: "no row", first: "immature", unknown: ["puncture"] },
        { ages: null },
      ),
    ).toContain("cannot tell");
  });

  it.each<[TractOut["unknown"], string]>([
    [["puncture"], "the day of the puncture is unknown"],
    [["out"], "the day on which the tube came out is unknown"],
    [["puncture", "out"], "the day of the puncture and the day on which the tube came out are unknown"],
  ])("a tract whose age cannot be told, by the day that is missing: %j", (unknown, missing) =>
    expect(tractOutLine({ age: null, maturity: "cannot tell", first: "immature", unknown }, { ages })).toBe(
      `Cannot tell whether the tract is mature: ${missing}; the row asks for 14 days. If access is lost this becomes a new puncture.`,
    ),
  );

  it("an immature tract first, and the mature one where nobody can tell which it is", () => {
    expect(outRowLines(row, { maturity: "immature", first: "immature" })).toEqual([
      "Of an immature tract: ring now, likely a new access (source 8; rest CP).",
    ]);
    expect(outRowLines(row, { maturity: "cannot tell", first: "immature" })).toEqual([
      "Of an immature tract: ring now, likely a new access (source 8; rest CP).",
      "If the tract were mature: same day; the tract stays open about 8-24 h.",
    ]);
    expect(outRowLines(row, { maturity: "mature", first: "mature" })).toEqual([
      "Of a mature tract: same day; the tract stays open about 8-24 h (source 8; rest CP).",
    ]);
    expect(outRowLines(partly, { maturity: "mature", first: "mature" })).toEqual([
      "Partly out: do not use, do not push back (source CP).",
    ]);
    expect(outRowLines(null, { maturity: "immature", first: "immature" })).toEqual([
      "The clinic's table has no row for it: the local on-call route decides.",
    ]);
  });

  it.each([
    [
      { yes: ["steroids", "diabetes"], unknown: ["ascites"] },
      "Slow to heal: steroids and diabetes. Not known, so ask: ascites.",
    ],
    [{ yes: ["steroids"], unknown: [] }, "Slow to heal: steroids."],
    [
      { yes: [], unknown: [] },
      "Nothing slows the tract: no ascites, no steroids, no malnutrition, no diabetes, no chemotherapy.",
    ],
  ] as const)("what slows it: %j", (slow, line) => expect(slowLine(slow)).toBe(line));

  it("sizes: an unknown one cannot be told, a reported one is marked", () => {
    expect(sizesLine({ size: unknownFact, below: null })).toBe(
      "Size that was in: cannot tell, it is not known.",
    );
    expect(sizesLine({ size: confirmed(lengthOf(10, "F")), below: lengthOf(8, "F") })).toBe(
      "Size that was in: 10 F; one usual step below: 8 F.",
    );
    expect(sizesLine({ size: { certainty: "reported", value: lengthOf(10, "F") }, below: null })).toBe(
      "Size that was in: 10 F (reported); one step below: cannot tell.",
    );
  });
});
