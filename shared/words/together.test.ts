import { describe, expect, it } from "vitest";
import type { MlPer24h } from "#shared/output/rate.ts";
import { besideWords, lowMeans, routeWords, urineSumWords, voidedWords } from "./together.ts";

const ml = (figure: number) => figure as MlPer24h;

describe("tubes that are read together (hard case 15)", () => {
  it("say opposite things of low, and a shut one says that it is shut", () => {
    expect(lowMeans({ role: "collection", mode: "to bag" })).toBe(
      "A collection: low asks for a review, and is one part of it.",
    );
    expect(lowMeans({ role: "drains an organ", mode: "to bag" })).toBe(
      "It drains an organ: low is an alarm, never a removal sign.",
    );
    for (const role of ["collection", "drains an organ"] as const)
      expect(lowMeans({ role, mode: "capped" })).toBe("It is capped: it shows zero and means to.");
  });

  it("say why they stand together, and when that is not certain", () => {
    const tube = {} as never;
    expect(besideWords({ tube, certain: true })).toMatch(/^Linked: bile/);
    expect(besideWords({ tube, certain: false })).toMatch(/nobody wrote down where the collection lies/);
  });
});

describe("urine by all routes, in words", () => {
  it("is a figure, or what it is instead", () => {
    expect(routeWords({ kind: "known", mlPer24h: ml(1480), remarks: [] })).toBe("1480 mL/24 h");
    expect(routeWords({ kind: "shut" })).toBe("shut");
    expect(routeWords({ kind: "not in" })).toBe("not in");
    expect(routeWords({ kind: "cannot tell", because: ["no-reading"] })).toBe(
      "cannot tell: No reading covers this time. Missing is not zero.",
    );
    expect(voidedWords({ kind: "known", mlPer24h: ml(0), remarks: [] })).toBe("0 mL/24 h");
    expect(voidedWords({ kind: "missing" })).toBe("not recorded");
    expect(voidedWords({ kind: "cannot tell" })).toBe("noted as not known");
  });

  it("names what is missing for the sum", () => {
    const titles = new Map([
      ["left", "Left nephrostomy"],
      ["right", "Right nephrostomy"],
    ]);
    expect(urineSumWords({ kind: "known", mlPer24h: ml(1550) }, titles)).toBe("1550 mL/24 h");
    expect(urineSumWords({ kind: "cannot tell", missing: ["right", "voided"] }, titles)).toBe(
      "cannot tell: Right nephrostomy and voided not known",
    );
  });
});
