import { expect, it } from "vitest";
import { typedOut } from "#shared/record/amend/typed-out.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { shelfType } from "#tests/factories/shelf-type.ts";

const drain = shelfType({
  sort: "tube",
  name: "Drain 10",
  outside: confirmed(lengthOf(10, "F")),
  takes: confirmed(lengthOf(0.038, "in")),
  bores: [{ place: "end hole", inside: confirmed(lengthOf(0.04, "in")), tolerance: null }],
  endHole: confirmed("open"),
  length: confirmed(lengthOf(25, "cm")),
  retention: confirmed("locking loop"),
});

it("says what the type said in the fields that were left blank", () => {
  expect(typedOut({ shelf: "drain", size: " ", takes: "?", note: "as planned" }, drain)).toEqual({
    shelf: "",
    size: "10 F",
    takes: "?",
    bores: "end hole 1.016 mm",
    endHole: "open",
    fullLength: "25 cm",
    retention: "locking loop",
    note: "as planned",
  });
});

it("is never surer than the type was, and leaves blank what it did not know", () => {
  const told = { certainty: "reported" } as const;
  const reported = shelfType({
    ...drain,
    outside: { ...told, value: lengthOf(10, "F") },
    takes: unknownFact,
    bores: [{ place: "hub", inside: { ...told, value: lengthOf(2, "mm") }, tolerance: null }],
    endHole: { ...told, value: "open" },
    length: unknownFact,
  });
  expect(typedOut({ shelf: "drain" }, reported)).toMatchObject({
    size: "~10 F",
    takes: "",
    bores: "hub ~2 mm",
    endHole: "?",
    fullLength: "",
  });
  expect(typedOut({ shelf: "drain" }, { ...drain, outside: unknownFact })).toMatchObject({ size: "" });
});
