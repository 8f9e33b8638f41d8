import { describe, expect, it } from "vitest";
import { F, placed } from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { confirmed, unknownFact } from "./certainty.ts";
import { fold } from "./fold.ts";
import { titlesOf, tubeName } from "./name.ts";

const name = (said: Parameters<typeof placed>[0]) => tubeName(fold(history(placed(said))).tubes[0]!);

describe("a tube's name", () => {
  it.each([
    [{ facts: { retention: confirmed("locking loop" as const) } }, "Left nephrostomy, 8 F, locking loop"],
    [{ side: "right" as const, size: F(10.2) }, "Right nephrostomy, 10.2 F"],
    [{ side: unknownFact, size: unknownFact }, "Side unknown: nephrostomy, size unknown"],
    [{ size: { certainty: "estimated" as const, value: F(8) } }, "Left nephrostomy, about 8 F"],
    [{ side: "transplant" as const }, "Transplant nephrostomy, 8 F"],
    [{ kind: "abscess drain" as const, side: "not sided" as const, size: F(12) }, "Abscess drain, 12 F"],
    [{ kind: "abscess drain" as const, side: unknownFact, size: F(12) }, "Abscess drain, 12 F"],
  ])("%#: side first, as a word, and what is unknown is said", (said, text) => {
    expect(name(said)).toBe(text);
  });
});

describe("tubes of one patient", () => {
  it("are told apart by their number where they have one title", () => {
    const tube = (number: number, side: "left" | "right") =>
      ({ id: `t${number}`, number, kind: "ureteral stent", side: confirmed(side) }) as const;
    expect([...titlesOf([tube(1, "left"), tube(2, "left"), tube(3, "right")]).values()]).toEqual([
      "Left ureteral stent (tube 1)",
      "Left ureteral stent (tube 2)",
      "Right ureteral stent",
    ]);
  });
});
