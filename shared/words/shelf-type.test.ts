import { describe, expect, it } from "vitest";
import { bySortAndSize } from "#shared/shelf/by-sort-and-size.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { typeWords } from "#shared/words/shelf-type.ts";
import { shelfType } from "#tests/factories/shelf-type.ts";

const F = (figure: number) => confirmed(lengthOf(figure, "F"));

describe("a type in words", () => {
  it("says of a tube everything, with what nobody knows", () => {
    const drain = shelfType({
      sort: "tube",
      name: "Drain 8",
      kinds: ["abscess drain"],
      outside: { certainty: "estimated", value: lengthOf(8, "F") },
      tolerance: lengthOf(0.05, "mm"),
      takes: confirmed(lengthOf(0.038, "in")),
      bores: [
        { place: "shaft", inside: confirmed(lengthOf(1.9, "mm")), tolerance: lengthOf(0.05, "mm") },
        { place: "valve", inside: unknownFact, tolerance: null },
      ],
      retention: { certainty: "reported", value: "locking loop" },
    });
    expect(typeWords(drain)).toEqual({
      name: "Drain 8",
      sort: "tube",
      outside: "about 8 F ± 0.05 mm",
      takes: "wire 0.038 in",
      insides: "shaft 1.9 mm ± 0.05 mm, valve unknown",
      length: "unknown",
      endHole: "unknown",
      retention: "locking loop",
      kinds: "abscess drain",
      known: "reported",
    });
  });

  it("says nothing of what its sort does not have", () => {
    expect(typeWords(shelfType({ outside: unknownFact }))).toMatchObject({
      outside: "unknown",
      takes: "",
      insides: "",
      endHole: "",
      retention: "",
      kinds: "",
    });
    expect(typeWords(shelfType({ sort: "sheath", takesDevice: F(9) }))).toMatchObject({
      takes: "device 9 F",
      insides: "unknown",
      endHole: "unknown",
      kinds: "",
    });
    expect(typeWords(shelfType({ sort: "tube", outside: F(8) })).kinds).toBe("any");
  });
});

it("types stand by sort, then by size, then by length, then by name; unknown sizes last", () => {
  const types = [
    shelfType({ name: "c", outside: unknownFact }),
    shelfType({ sort: "dilator", name: "d", outside: F(7) }),
    shelfType({ name: "b", length: confirmed(lengthOf(180, "cm")) }),
    shelfType({ name: "a", length: confirmed(lengthOf(180, "cm")) }),
    shelfType({ name: "e", length: confirmed(lengthOf(80, "cm")) }),
    shelfType({ sort: "needle", name: "n", outside: F(3) }),
  ];
  expect(bySortAndSize(types).map(({ name }) => name)).toEqual(["e", "a", "b", "c", "n", "d"]);
});
