import { describe, expect, it } from "vitest";
import { balloonField } from "./balloon-field.ts";
import { fluidsField } from "./fluids-field.ts";
import { flushField } from "./volume-field.ts";

const flush = flushField({ label: "Flush" });

describe("flush that was given", () => {
  it.each([
    ["10", { ul: 10_000, estimated: false }],
    ["3 x 10", { ul: 30_000, estimated: false }],
    ["3x10 mL", { ul: 30_000, estimated: false }],
    ["~10", { ul: 10_000, estimated: true }],
    ["none", "none"],
    ["0", "none"],
    ["", "not recorded"],
    ["?", "not recorded"],
  ])("%j", (text, value) => expect(flush.read(text)).toEqual({ ok: true, value }));

  it.each([
    ["-10", "volume-negative"],
    ["a bit", "volume-not-understood"],
    ["1,000", "volume-comma-unclear"],
  ])("%j is refused: %s", (text, code) =>
    expect(flush.read(text)).toMatchObject({ ok: false, refusal: { code } }),
  );

  it("echoes millilitres", () => {
    expect(flush.echo?.({ ul: 30_000 as never, estimated: true })).toBe("about 30 mL");
    expect(flush.echo?.("not recorded")).toBe("not recorded");
  });
});

describe("other fluid that was put in", () => {
  const fluids = fluidsField({ label: "Other" });
  it("reads each with its volume", () => {
    expect(fluids.read("contrast 20, irr 0.5 L")).toEqual({
      ok: true,
      value: [
        { fluid: "contrast", ul: 20_000 },
        { fluid: "irrigation", ul: 500_000 },
      ],
    });
    expect(fluids.read("")).toEqual({ ok: true, value: [] });
  });
  it.each([
    ["20", "fluids-not-understood"],
    ["contrast", "fluids-not-understood"],
    ["tea 200", "word-unknown"],
    [Array.from({ length: 13 }, () => "contrast 1").join(", "), "too-many"],
  ])("%j is refused: %s", (text, code) =>
    expect(fluids.read(text)).toMatchObject({ ok: false, refusal: { code } }),
  );
});

describe("water in a balloon", () => {
  const balloon = balloonField({ label: "Balloon" });
  it.each([
    ["", undefined],
    ["8", { certainty: "confirmed", value: 8 }],
    ["~7.5 mL", { certainty: "estimated", value: 7.5 }],
    ["60", { certainty: "confirmed", value: 60 }],
    ["?", { certainty: "unknown" }],
  ])("%j", (text, value) => expect(balloon.read(text)).toEqual({ ok: true, value }));
  it("refuses more than any balloon holds", () =>
    expect(balloon.read("61")).toEqual({
      ok: false,
      refusal: { code: "volume-absurd", args: { text: "61", limit: "60 mL" } },
    }));
});
