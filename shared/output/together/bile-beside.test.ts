import { describe, expect, it } from "vitest";
import { fold } from "#shared/tube/fold.ts";
import { capped, type Entry, factsNoted, fellOut, placed, removed } from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { bileBeside } from "./bile-beside.ts";

type Opens = Parameters<typeof placed>[0];

const collection = (said: Opens = {}): Entry =>
  placed({
    tube: "collection",
    kind: "abscess drain",
    side: "not sided",
    cavity: "biloma under the liver",
    ...said,
  });
const biliary = (said: Opens = {}): Entry =>
  placed({ tube: "bile", number: 2, kind: "external biliary drain", side: "right", ...said });

/** Which tubes stand beside that one, and whether it is certain that bile is in both. */
function besideOf(id: string, ...entries: readonly Entry[]): readonly (readonly [string, boolean])[] {
  const { tubes } = fold(history(...entries));
  const tube = tubes.find((one) => one.id === id);
  if (tube === undefined) throw new Error(`no tube ${id}`);
  return bileBeside(tube, tubes).map((one) => [one.tube.id, one.certain]);
}

describe("hard case 15: a biloma drain beside a biliary drain", () => {
  it("are linked, from either side", () => {
    expect(besideOf("collection", collection(), biliary())).toEqual([["bile", true]]);
    expect(besideOf("bile", collection(), biliary())).toEqual([["collection", true]]);
  });

  it.each([
    ["its cavity", { cavity: "Bile leak, gallbladder fossa" }],
    ["what it is there for", { cavity: "subhepatic", indication: "biliary leak" }],
    [
      "the fluid that it is expected to drain",
      { cavity: "subhepatic", facts: { expectedFluid: ["bilious"] } },
    ],
  ] as const)("the collection says that it is bile by %s", (_name, said) => {
    expect(besideOf("collection", collection(said as Opens), biliary())).toEqual([["bile", true]]);
  });

  it("by its expected fluid noted later too", () => {
    const noted = factsNoted({ tube: "collection", on: "2026-08-20", facts: { expectedFluid: ["bilious"] } });
    expect(besideOf("bile", collection({ cavity: "subhepatic" }), biliary(), noted)).toEqual([
      ["collection", true],
    ]);
  });

  it("a collection that lies nobody wrote where may be bile; one that is known to lie elsewhere is not", () => {
    expect(besideOf("bile", collection({ cavity: null }), biliary())).toEqual([["collection", false]]);
    expect(besideOf("bile", collection({ cavity: "  " }), biliary())).toEqual([["collection", false]]);
    expect(besideOf("collection", collection({ cavity: null }), biliary())).toEqual([["bile", false]]);
    expect(besideOf("bile", collection({ cavity: "left paracolic" }), biliary())).toEqual([]);
    expect(besideOf("collection", collection({ cavity: "left paracolic" }), biliary())).toEqual([]);
    expect(besideOf("collection", collection({ cavity: "above the mobile cecum" }), biliary())).toEqual([]);
  });

  it("every drain of the ducts and the gallbladder counts, and a capped one", () => {
    const both = biliary({ kind: "internal-external biliary drain" });
    const gallbladder = placed({ tube: "gb", number: 3, kind: "cholecystostomy", side: "not sided" });
    const shut = capped({ tube: "bile", on: "2026-08-20" });
    expect(besideOf("collection", collection(), both, gallbladder, shut)).toEqual([
      ["bile", true],
      ["gb", true],
    ]);
  });

  it("two drains of the ducts are not linked, nor two collections, nor a kidney's tube", () => {
    const kidney = placed({ tube: "kidney", number: 3 });
    const second = collection({ tube: "second", number: 4 });
    const entries = [collection(), biliary(), kidney, second];
    expect(besideOf("kidney", ...entries)).toEqual([]);
    expect(besideOf("collection", ...entries)).toEqual([["bile", true]]);
    expect(besideOf("bile", ...entries, biliary({ tube: "left", number: 5, side: "left" }))).toEqual([
      ["collection", true],
      ["second", true],
    ]);
  });

  it("a tube that is out is linked no more, one that was only told out still is", () => {
    expect(
      besideOf("collection", collection(), biliary(), fellOut({ tube: "bile", on: "2026-08-20" })),
    ).toEqual([]);
    expect(
      besideOf("collection", collection(), biliary(), removed({ tube: "bile", on: "2026-08-20" })),
    ).toEqual([]);
    const told = removed({ tube: "bile", on: "2026-08-20", toldBy: "her daughter" });
    expect(besideOf("collection", collection(), biliary(), told)).toEqual([["bile", true]]);
  });
});
