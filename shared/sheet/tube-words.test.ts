import { describe, expect, it } from "vitest";
import { tubeWords } from "#shared/sheet/tube-words.ts";

const read = (cell: string) => {
  const result = tubeWords(cell);
  return result.ok ? Object.values(result.value) : result.refusal.code;
};

describe("what one cell says of a tube: kind, side, size, what holds it", () => {
  // Short forms of the trade: common practice, no source.
  it.each([
    ["PCN L", ["nephrostomy", "left", null, null]],
    ["L PCN", ["nephrostomy", "left", null, null]],
    ["PCN (L)", ["nephrostomy", "left", null, null]],
    ["PCN, left-sided", ["nephrostomy", "left", null, null]],
    ["Lt. PCN tube", ["nephrostomy", "left", null, null]],
    ["Rt nephrostomy 8F", ["nephrostomy", "right", "8F", null]],
    ["perc chole", ["cholecystostomy", null, null, null]],
    ["8Fr pigtail", [null, null, "8Fr", "locking loop"]],
    ["8Fr pigtail PCN R", ["nephrostomy", "right", "8Fr", "locking loop"]],
    ["10.2 F abscess drain", ["abscess drain", null, "10.2 F", null]],
    ["PCN (L), 8,5 F", ["nephrostomy", "left", "8,5 F", null]],
    ["JJ left 6 Ch", ["ureteral stent", "left", "6 Ch", null]],
    ["balloon gastrostomy 18 Fr", ["balloon gastrostomy", null, "18 Fr", "balloon"]],
    ["~8 f", [null, null, "~8 f", null]],
    ["left", [null, "left", null, null]],
    ["", [null, null, null, null]],
  ])("%j: %j", (cell, said) => expect(read(cell)).toEqual(said));

  it.each([
    ["8/10F", "two-sizes"],
    ["8-10 Fr PCN", "two-sizes"],
    ["8F and 10F", "two-sizes"],
    ["PCN bilateral", "two-tubes"],
    ["PCN B/L", "two-tubes"],
    ["L&R PCN", "two-tubes"],
    ["JJ x2", "two-tubes"],
    ["widget drain", "kind-not-said"],
    ["G-tube 18F", "word-unclear"],
  ])("%j is refused: %s", (cell, code) => expect(read(cell)).toBe(code));
});
