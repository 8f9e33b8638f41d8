import { describe, expect, it } from "vitest";
import { exampleProtocol } from "./example.ts";
import { sourceLines } from "./sources.ts";

describe("the sources of a row", () => {
  it("are spelled out one by one", () => {
    expect(sourceLines("5; rest CP")).toEqual([
      "5: CADTH rapid response RC0581, nephrostomy and biliary tube care",
      "CP: common practice, no source",
    ]);
  });

  it.each(exampleProtocol.intervals.map(({ id, source }) => [id, source]))(
    "of %s are all known",
    (_id, source) => {
      expect(sourceLines(source)).toHaveLength(source.match(/\d+|CP|MEM/g)?.length ?? 0);
      expect(sourceLines(source).length).toBeGreaterThan(0);
    },
  );
});
