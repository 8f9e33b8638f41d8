import { describe, expect, it } from "vitest";
import { placeFromAddress, placeInAddress } from "#app/lists/place.ts";
import { day } from "#shared/day/day.ts";

describe("the place in the address of Exchanges", () => {
  it("comes back as it went", () => {
    const place = { dueOn: day("2026-11-06"), id: "tube-1:remove or exchange" };
    const word = placeInAddress(place);
    expect(word).toMatch(/^[\w-]+$/);
    expect(placeFromAddress(word)).toEqual(place);
  });

  it.each([
    ["nothing", undefined],
    ["an empty word", ""],
    ["any word", "next"],
    ["a day that does not exist", Buffer.from("2026-02-31 x").toString("base64url")],
    ["a day alone", Buffer.from("2026-02-28").toString("base64url")],
    ["an id that is too long", Buffer.from(`2026-02-28 ${"x".repeat(201)}`).toString("base64url")],
  ])("%s is the first page", (_, word) => {
    expect(placeFromAddress(word)).toBeUndefined();
  });
});
