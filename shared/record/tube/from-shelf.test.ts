import { describe, expect, it } from "vitest";
import type { Texts } from "#shared/record/field-spec.ts";
import { factsForm } from "#shared/record/tube/facts-form.ts";
import { openingForm } from "#shared/record/tube/opening-form.ts";
import { exchangeForm, upsizeForm } from "#shared/record/tube/renewal-form.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { formContext } from "#tests/factories/form-context.ts";
import { shelfType } from "#tests/factories/shelf-type.ts";

const endHole = { place: "end hole", inside: confirmed(lengthOf(0.04, "in")), tolerance: null } as const;

const drain = shelfType({
  sort: "tube",
  name: "Drain 10",
  outside: confirmed(lengthOf(10, "F")),
  takes: confirmed(lengthOf(0.038, "in")),
  bores: [endHole],
  endHole: confirmed("open"),
  length: confirmed(lengthOf(25, "cm")),
  retention: { certainty: "reported", value: "locking loop" },
});
const nameless = shelfType({ sort: "tube", name: "Odd", endHole: confirmed("closed") });
const shelf = [drain, { ...nameless, outside: unknownFact }, shelfType({ name: "Drain wire" })];
const context = formContext({ shelf });

const opening = { kind: "pcn l", when: "today" };
const filled = {
  size: drain.outside,
  takes: drain.takes,
  bores: [endHole],
  endHole: drain.endHole,
  fullLength: drain.length,
  retention: drain.retention,
};

const factsIn = (form: typeof exchangeForm | typeof factsForm, texts: Texts) => {
  const read = form.read({ when: "today", ...texts }, context);
  return read.ok ? read.entry.payload.facts : read.refusals;
};

function opened(texts: Texts) {
  const read = openingForm.read({ ...opening, ...texts }, context);
  return read.ok ? read.entry.payload.facts : read.refusals;
}

describe("a tube from the shelf", () => {
  it("says of a record that opens what was left blank; the rest is unknown", () => {
    expect(opened({ shelf: "drain" })).toMatchObject({ ...filled, externalLength: unknownFact });
  });

  it("says of an exchange and of facts noted what it says, and nothing else", () => {
    expect(factsIn(exchangeForm, { shelf: "Drain 10" })).toEqual(filled);
    expect(factsIn(factsForm, { shelf: "Drain 10" })).toEqual(filled);
    expect(factsIn(factsForm, { shelf: "odd" })).toEqual({ endHole: confirmed("closed") });
  });

  it("says nothing of what was typed, an unknown too", () => {
    const typed = {
      shelf: "drain",
      size: "~12 f",
      takes: "?",
      bores: "hub 2 mm",
      length: "",
      fullLength: "30",
    };
    expect(opened(typed)).toMatchObject({
      ...filled,
      size: { certainty: "estimated", value: lengthOf(12, "F") },
      takes: unknownFact,
      bores: [{ place: "hub", inside: confirmed(lengthOf(2, "mm")), tolerance: null }],
      fullLength: confirmed(lengthOf(30, "cm")),
    });
  });

  it("is reported in an entry that others told", () => {
    expect(factsIn(exchangeForm, { shelf: "drain", elsewhere: "another hospital" })).toMatchObject({
      size: { certainty: "reported", value: lengthOf(10, "F") },
      bores: [{ place: "end hole", inside: { certainty: "reported", value: lengthOf(0.04, "in") } }],
    });
  });

  it.each([
    ["nothing is chosen", { shelf: "" }],
    ["the type has no size", { shelf: "odd" }],
  ])("leaves the size to be typed where %s", (_, texts) => {
    const missing = [{ code: "text-missing", field: "size" }];
    expect(opened(texts)).toMatchObject(missing);
    expect(upsizeForm.read({ when: "today", ...texts }, context)).toMatchObject({ refusals: missing });
    expect(opened({ ...texts, size: "?" })).toMatchObject({ size: unknownFact });
  });

  it("is a tube: no wire goes by its name", () => {
    expect(opened({ shelf: "drain wire" })).toMatchObject([{ code: "shelf-name-unknown", field: "shelf" }]);
  });

  it("is not asked for where the shelf has no tube, and is where it has", () => {
    const asks = (types: typeof shelf) =>
      openingForm.fields(formContext({ shelf: types })).shelf.belongs?.({}) ?? true;
    expect([asks([]), asks([shelfType()]), asks([drain])]).toEqual([false, false, true]);
  });
});
