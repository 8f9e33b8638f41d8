import { describe, expect, it } from "vitest";
import { filledField, lineField, noteField, textFactField } from "./text-field.ts";

const line = lineField({ label: "Organ" });

describe("text is kept as typed", () => {
  it.each([
    ["right-to-left text", "עברית וعربية 123"],
    ["a script tag", "<script>alert(1)</script>"],
    ["a formula", "=1+1"],
    ["quotes", `O'Invented "Jo"`],
  ])("%s", (_, text) => {
    expect(line.read(`  ${text} `)).toEqual({ ok: true, value: text });
  });

  it("is at most 200 characters in a line and 2,000 in a note, and the limit is told", () => {
    expect(line.read("x".repeat(200))).toEqual({ ok: true, value: "x".repeat(200) });
    expect(line.read("x".repeat(201))).toEqual({
      ok: false,
      refusal: { code: "text-too-long", args: { limit: 200 } },
    });
    const note = noteField({ label: "Note" });
    expect(note.read("x".repeat(2000)).ok).toBe(true);
    expect(note.read("x".repeat(2001))).toMatchObject({ refusal: { args: { limit: 2000 } } });
  });

  it("is null when blank, or refused where it is needed", () => {
    expect(line.read("  ")).toEqual({ ok: true, value: null });
    expect(filledField({ label: "By" }, "who decided it").read(" ")).toEqual({
      ok: false,
      refusal: { code: "text-missing", args: { what: "who decided it" } },
    });
  });
});

it.each([
  ["", undefined],
  ["?", { certainty: "unknown" }],
  ["~ two anchors", { certainty: "estimated", value: "two anchors" }],
  ["two anchors", { certainty: "confirmed", value: "two anchors" }],
])("a fact in words: %j", (text, value) => {
  expect(textFactField({ label: "Fixation" }).read(text)).toEqual({ ok: true, value });
});
