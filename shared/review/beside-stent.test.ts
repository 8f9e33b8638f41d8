import { expect, it } from "vitest";
import { liesBesideStent } from "#shared/review/beside-stent.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import type { Side } from "#shared/tube/vocabulary.ts";

const kidney = {
  kind: "nephrostomy",
  side: confirmed<Side>("left"),
  status: "in",
} as const;
const stent = { kind: "ureteral stent", side: confirmed<Side>("left"), status: "in" } as const;

it.each([
  ["of the same side", stent, true],
  ["of the other side", { ...stent, side: confirmed<Side>("right") }, false],
  ["of a side that nobody knows", { ...stent, side: unknownFact }, true],
  ["that is out", { ...stent, status: "ended" }, false],
  ["that was told out and confirmed by nobody", { ...stent, status: "removal not confirmed" }, true],
  ["of a bile duct", { ...stent, kind: "plastic biliary stent" }, false],
  ["that is no stent", { ...kidney, side: confirmed<Side>("left") }, false],
] as const)("a nephrostomy beside a stent %s (hard case 22)", (_name, other, beside) => {
  expect(liesBesideStent(kidney, [other])).toBe(beside);
});

it("of a tube that drains no kidney nothing is said", () => {
  expect(liesBesideStent({ ...kidney, kind: "suprapubic catheter" }, [stent])).toBe(false);
  expect(liesBesideStent(stent, [stent])).toBe(false);
});

it("a nephrostomy whose own side is unknown may lie beside any", () => {
  expect(liesBesideStent({ ...kidney, side: unknownFact }, [stent])).toBe(true);
});
