import { describe, expect, it } from "vitest";
import type { Coaxial } from "#shared/fit/coaxial.ts";
import { coaxialSchema } from "#shared/fit/coaxial-schema.ts";
import { places } from "#shared/fit/inside.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { cm, coaxial, F, mm } from "#tests/factories/coaxial.ts";
import { blank, bore, inch, reported } from "#tests/factories/tube-inside.ts";

const full: Coaxial = coaxial("tube", {
  outside: F(8),
  tolerance: mm(0.1),
  inside: {
    takes: confirmed(inch(0.038)),
    takesDevice: reported(F(5)),
    bores: places.map((place) => bore(place, 0.05, null)),
    endHole: confirmed("open"),
  },
  length: cm(25),
});

const understood = (thing: unknown): boolean => coaxialSchema.safeParse(thing).success;

describe("one thing of a chain as it is stored", () => {
  it("comes back as it was, whatever is known of it", () => {
    expect(coaxialSchema.parse(full)).toEqual(full);
    expect(coaxialSchema.parse(coaxial("wire"))).toEqual(coaxial("wire"));
    const closed = coaxial("tube", { inside: { ...blank, endHole: confirmed("closed") } });
    expect(coaxialSchema.parse(closed)).toEqual(closed);
  });

  it("is none of another sort, with more than is asked, or with less", () => {
    expect(understood({ ...full, sort: "tract" })).toBe(false);
    expect(understood({ ...full, maker: "none" })).toBe(false);
    expect(understood({ ...full, inside: { ...full.inside, french: 8 } })).toBe(false);
    const { length: _, ...short } = full;
    expect(understood(short)).toBe(false);
    const nine = Array.from({ length: 9 }, () => bore("hub", 0.05));
    expect(understood({ ...full, inside: { ...full.inside, bores: nine } })).toBe(false);
    expect(understood({ ...full, inside: { ...full.inside, bores: nine.slice(1) } })).toBe(true);
    expect(understood({ ...full, inside: { ...full.inside, endHole: confirmed("half") } })).toBe(false);
  });
});
