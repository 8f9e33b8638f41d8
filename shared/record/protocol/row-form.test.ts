import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { rowAt, rowsOf, typedRow } from "#shared/protocol/rows/rows-of.ts";
import { readField, type Texts } from "#shared/record/field-spec.ts";
import { rowForm } from "./row-form.ts";

/** As it comes to a browser. */
const sent = (address: string) => JSON.parse(JSON.stringify(rowAt(exampleProtocol, address)));

const read = (address: string, texts: Texts = {}) => {
  const result = rowForm.read(texts, sent(address));
  return result.ok ? "read" : result.refusals.map(({ code, field }) => [code, field]);
};

const beside = (address: string, path: string, text: string) =>
  readField(rowForm.fields(sent(address))[path]!, text);

describe("the form of a row", () => {
  it.each(rowsOf(exampleProtocol).map(({ address }) => address))(
    "%s opens as it stands and can be saved so",
    (address) => {
      const fields = rowForm.fields(sent(address));
      expect(
        Object.fromEntries(Object.entries(fields).map(([path, { initial }]) => [path, initial])),
      ).toEqual(typedRow(exampleProtocol, address));
      expect(read(address)).toBe("read");
    },
  );

  it("begins with the days of an interval that stands, and with the kind of a new one", () => {
    expect(Object.keys(rowForm.fields(sent("intervals/nephrostomy"))).slice(0, 4)).toEqual([
      "earliest",
      "target",
      "latest",
      "hardLatest",
    ]);
    expect(Object.keys(rowForm.fields(sent("intervals")))[0]).toBe("kind");
  });

  it("offers the words of a list, and blank as no row where it says so", () => {
    const { factor, asks } = rowForm.fields(sent("intervals/nephrostomy"));
    expect(factor?.choices?.map(({ label }) => label)).toEqual([
      "no row",
      "pregnancy",
      "stone former",
      "cancer obstruction",
    ]);
    expect(asks?.choices?.map(({ value }) => value)).toEqual(["", "exchange", "review", "operator's date"]);
  });

  it.each([
    ["passage", "clearance", "0.001 in", { echo: "0.025 mm (0.001 in)" }],
    ["intervals/nephrostomy", "latest", "", { echo: "no row" }],
    ["intervals/nephrostomy", "latest", "90", {}],
    [
      "outputRows.dry/1",
      "kinds",
      "neph, supra",
      { problem: '"neph" can mean nephrostomy, nephroureteral catheter. Type more of it.' },
    ],
    ["outputRows.dry/1", "kinds", "nephros, supra", { echo: "nephrostomy, suprapubic catheter" }],
    ["calls.trialOn", "days", "1 2 and 7", { echo: "1, 2, 7" }],
    ["tubeOut/nephrostomy", "kinds", "", {}],
    [
      "intervals/nephrostomy",
      "target",
      "-1",
      { problem: '"-1" is not between 0 and 3650. Check the number.' },
    ],
  ])("%s %s: %j is understood as %j", (address, path, text, reading) => {
    expect(beside(address, path, text)).toEqual(reading);
  });

  it("asks for what is missing, and for the rest of a place that is begun", () => {
    expect(read("intervals/nephrostomy", { source: "" })).toEqual([["text-missing", "source"]]);
    expect(read("redFlags/fever", { "raisedBy.2.trouble": "leaking" })).toEqual([
      ["text-missing", "raisedBy.2.grave"],
    ]);
    expect(read("redFlags/fever", { "raisedBy.1.trouble": "", "raisedBy.1.grave": "" })).toBe("read");
  });

  it("left wholly blank is no row, a new one says nothing, and one that there has to be is asked for", () => {
    const blank = (address: string): Texts =>
      Object.fromEntries(Object.keys(typedRow(exampleProtocol, address)).map((path) => [path, ""]));
    expect(read("balloon", blank("balloon"))).toBe("read");
    expect(read("intervals", blank("intervals"))).toEqual([["nothing-said", undefined]]);
    expect(read("escalation", blank("escalation"))).toEqual([
      ["text-missing", "daysPastTarget"],
      ["text-missing", "source"],
    ]);
  });
});
