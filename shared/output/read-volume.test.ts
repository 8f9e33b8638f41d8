import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readVolume } from "./read-volume.ts";

const read = (text: string, ul: number, certainty = "confirmed") =>
  expect(readVolume(text, "amount")).toEqual({
    ok: true,
    value: { volume: { certainty, value: ul }, asSpoken: text.trim() },
  });

const refused = (text: string, code: string) =>
  expect(readVolume(text, "amount")).toMatchObject({ ok: false, refusal: { code } });

describe("a volume, typed", () => {
  it.each([
    ["35", 35_000],
    ["35 mL", 35_000],
    ["35ml", 35_000],
    ["35 cc", 35_000],
    [" 35  ML ", 35_000],
    ["0", 0],
    ["-0", 0],
    ["0.5", 500],
    [".5 ml", 500],
    ["8,5 ml", 8_500],
    ["1.2 l", 1_200_000],
    ["1,2 L", 1_200_000],
    ["1000", 1_000_000],
    ["1 liter", 1_000_000],
  ])("%j is %i microlitres", (text, ul) => {
    read(text, ul);
  });

  // US fluid ounce, 29.5735 mL (from memory): hard case 32.
  it.each([
    ["1 oz", 29_574],
    ["2 oz", 59_147],
    ["2 fl oz", 59_147],
    ["16 ounces", 473_176],
  ])("hard case 32: %j is %i microlitres and keeps its words", (text, ul) => {
    read(text, ul);
  });

  it("about is estimated, ? is unknown and holds no number", () => {
    read("~40", 40_000, "estimated");
    read("~ 2 oz", 59_147, "estimated");
    expect(readVolume("?", "amount")).toEqual({
      ok: true,
      value: { volume: { certainty: "unknown" }, asSpoken: "?" },
    });
  });

  it.each(
    [
      ["", "volume-missing"],
      ["   ", "volume-missing"],
      ["half a bag", "volume-by-vessel"],
      ["2 cups", "volume-by-vessel"],
      ["a baggage", "volume-not-understood"],
      ["35 F", "volume-not-understood"],
      ["35 oz oz", "volume-not-understood"],
      ["constructor", "volume-not-understood"],
      ["1 constructor", "volume-not-understood"],
      ["1e3", "volume-not-understood"],
      ["3 5", "volume-not-understood"],
      ["1,500", "volume-comma-unclear"],
      ["1,500 ml", "volume-comma-unclear"],
      ["8,5", "volume-needs-unit"],
      ["-5", "volume-negative"],
      ["-5 ml", "volume-negative"],
      ["−5", "volume-negative"],
      ["101 l", "volume-absurd"],
      ["9".repeat(41), "volume-not-understood"],
    ].filter(([, code]) => code !== "volume-needs-nothing"),
  )("%j is refused: %s", (text, code) => {
    refused(text, code);
  });

  it.each([
    ["half a bag", "volume-by-vessel"],
    ["35 F", "volume-not-understood"],
    ["1 constructor", "volume-not-understood"],
    ["1,500", "volume-comma-unclear"],
    ["8,5", "volume-needs-unit"],
    ["-5", "volume-negative"],
  ])("%j is named in what is said of it", (text, code) => {
    expect(readVolume(text, "amount")).toEqual({ ok: false, refusal: { code, args: { text } } });
  });

  it("what is too much is told with the limit", () => {
    expect(readVolume("101 l", "amount")).toEqual({
      ok: false,
      refusal: { code: "volume-absurd", args: { text: "101 l", limit: "100 L" } },
    });
  });

  it("100 L is the last that is read; what is merely much is asked about elsewhere, never cut", () => {
    read("100 l", 100_000_000);
  });

  it("a net figure of another chart may be negative, a flush may not", () => {
    expect(readVolume("-10", "net")).toMatchObject({ value: { volume: { value: -10_000 } } });
    refused("-10", "volume-negative");
  });

  it("whatever is typed is read as whole microlitres or refused with a code", () => {
    const part = fc.constantFrom("~", "-", "?", " ", ",", ".", "ml", "oz", "l", "0", "35", "1000");
    const typed = fc.oneof(
      fc.string({ maxLength: 60 }),
      fc.array(part, { maxLength: 6 }).map((parts) => parts.join("")),
    );
    fc.assert(
      fc.property(typed, fc.constantFrom("amount" as const, "net" as const), (text, field) => {
        const typedVolume = readVolume(text, field);
        if (!typedVolume.ok || typedVolume.value.volume.certainty === "unknown") return;
        const { value } = typedVolume.value.volume;
        expect(Number.isSafeInteger(value)).toBe(true);
        if (field === "amount") expect(value).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 500 },
    );
  });

  it("millilitres printed with up to three decimals are read back", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5_000_000 }), (ul) => {
        expect(readVolume(`${ul / 1000} mL`, "amount")).toMatchObject({ value: { volume: { value: ul } } });
      }),
    );
  });
});
