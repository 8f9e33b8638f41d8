import { describe, expect, it } from "vitest";
import { characters } from "#shared/tube/vocabulary.ts";
import {
  choiceField,
  choicesOf,
  factChoiceField,
  flagField,
  knownYesNoField,
  neededYesNoField,
  yesNoField,
} from "./choice-field.ts";
import { asWords } from "./match-word.ts";
import { wordsField } from "./words-field.ts";

describe("several words of a list", () => {
  const words = wordsField({ label: "Character" }, asWords(characters));
  it.each([
    ["", undefined],
    ["ser", "word-unclear"],
    ["serous", ["serous"]],
    ["blo, deb", ["bloody", "debris"]],
    ["Bloody,bloody,", ["bloody"]],
    ["green", "word-unknown"],
  ])("%j", (text, found) => {
    const read = words.read(text);
    expect(read.ok ? read.value : read.refusal.code).toEqual(found);
  });
  it("echoes the whole words", () => expect(words.echo?.(["bloody", "debris"])).toBe("bloody, debris"));
});

describe("choices", () => {
  const retention = factChoiceField({ label: "Held by" }, choicesOf(["locking loop", "balloon"]));
  it.each([
    ["", undefined],
    ["Not said", undefined],
    ["?", { certainty: "unknown" }],
    ["Locking loop", { certainty: "confirmed", value: "locking loop" }],
  ])("a fact among a few: %j", (text, value) => expect(retention.read(text)).toEqual({ ok: true, value }));

  it("refuses what is not offered", () => {
    const refusal = { code: "choice-unknown", args: { text: "glue" } };
    expect(retention.read("glue")).toEqual({ ok: false, refusal });
    expect(yesNoField({ label: "Whole" }).read("maybe")).toMatchObject({
      refusal: { code: "choice-unknown" },
    });
    expect(flagField({ label: "Difficult" }).read("maybe")).toMatchObject({
      refusal: { code: "choice-unknown" },
    });
  });

  it("reads yes and no, and asks where an answer is needed", () => {
    const whole = neededYesNoField({ label: "Whole" }, "yes, no or ?");
    expect(whole.read("no")).toEqual({ ok: true, value: { certainty: "confirmed", value: false } });
    expect(whole.read("?")).toEqual({ ok: true, value: { certainty: "unknown" } });
    expect(whole.read("")).toEqual({
      ok: false,
      refusal: { code: "text-missing", args: { what: "yes, no or ?" } },
    });
    expect(whole.choices?.[0]).toEqual({ value: "", label: "Choose" });
  });

  it("offers a blank only where nothing is chosen yet", () => {
    const offered = choicesOf(["none", "damp"]);
    const words = { label: "Leak", what: "none or damp" };
    expect(choiceField(words, offered).choices?.map(({ label }) => label)).toEqual([
      "Choose",
      "None",
      "Damp",
    ]);
    const begun = choiceField({ ...words, initial: "none" }, offered);
    expect(begun.choices?.map(({ label }) => label)).toEqual(["None", "Damp"]);
    expect(begun.read("")).toMatchObject({ ok: false, refusal: { code: "text-missing" } });
  });
});

describe("yes, no, or not known", () => {
  const field = knownYesNoField({ label: "Needs an interpreter" }, "Not known");
  it.each([
    ["", null],
    ["?", null],
    ["unknown", null],
    ["Not known", null],
    ["yes", true],
    ["No", false],
    ["perhaps", "choice-unknown"],
  ])("%j", (text, found) => {
    const read = field.read(text);
    expect(read.ok ? read.value : read.refusal.code).toBe(found);
  });
  it("offers what it does not know first", () => {
    expect(field.choices?.map(({ label }) => label)).toEqual(["Not known", "Yes", "No"]);
  });
});
