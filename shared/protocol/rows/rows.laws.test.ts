import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { type Protocol, protocolSchema } from "#shared/protocol/protocol.ts";
import { protocolChanges } from "#shared/words/protocol/changes.ts";
import { blankPlaces, isInBlank } from "./blank-places.ts";
import { changeRow, dropRow } from "./change-row.ts";
import { fileLines } from "./file-lines.ts";
import type { LeafSpec, LeafValue } from "./leaf.ts";
import { readFileLines } from "./read-file-lines.ts";
import { listsOfRows, rowAt, rowsOf, typedRow } from "./rows-of.ts";

const digits = (least: number | null, most: number | null) =>
  fc.integer({ min: least ?? -500, max: Math.min(most ?? 500, 500) }).map(String);

const words = fc
  .string({ minLength: 1, maxLength: 60, unit: fc.constantFrom(..."abz 0-=+@'\",;/.é") })
  .map((text) => text.trim())
  .filter((text) => text !== "");

/** Something that can be typed in a place of this sort. */
function typedIn(value: LeafValue): fc.Arbitrary<string> {
  switch (value.is) {
    case "whole number":
      return digits(value.least, value.most);
    case "number":
      return fc.oneof(
        digits(value.least, value.most),
        digits(value.least, (value.most ?? 400) - 1).map((text) => `${text}.25`),
      );
    case "length":
      return fc.constantFrom(
        "0 mm",
        "0.05 mm",
        "0.001 in",
        "0.33 mm",
        "1 F",
        "0.12345 in",
        "0.00002 F",
        "0.1 cm",
      );
    case "words":
      return words;
    case "yes or no":
      return fc.constantFrom("yes", "no");
    case "one of":
      return fc.constantFrom(...value.options);
    case "some of":
      return fc.subarray([...value.options], { minLength: 1, maxLength: 3 }).map((some) => some.join(", "));
    case "numbers":
      return fc
        .uniqueArray(digits(value.least, value.most), { minLength: 1, maxLength: 4 })
        .map((some) => some.join(", "));
    case "list of words":
      return fc.uniqueArray(words, { minLength: 1, maxLength: 4 }).map((some) => some.join("\n"));
  }
}

const typedOrBlank = ({ value, mayBeBlank }: LeafSpec): fc.Arbitrary<string> =>
  mayBeBlank
    ? fc.oneof({ weight: 3, arbitrary: typedIn(value) }, { weight: 1, arbitrary: fc.constant("") })
    : typedIn(value);

/** What was typed into some places of a row; what it cannot be is refused, and the version stays as it was. */
type Step = (protocol: Protocol) => Protocol;

const addresses = [...rowsOf(exampleProtocol).map(({ address }) => address), ...listsOfRows];

const stepAt = (address: string): fc.Arbitrary<Step> => {
  const leaves = rowAt(exampleProtocol, address)?.leaves ?? [];
  const isNew = listsOfRows.includes(address);
  const typed = fc
    .record(Object.fromEntries(leaves.map((leaf) => [leaf.path, typedOrBlank(leaf)])), {
      requiredKeys: isNew ? leaves.map(({ path }) => path) : [],
    })
    .map(
      (texts): Step =>
        (protocol) => {
          const result = changeRow(protocol, address, { ...typedRow(protocol, address), ...texts });
          return result.ok ? result.protocol : protocol;
        },
    );
  const dropped = fc.constant<Step>((protocol) => {
    const result = dropRow(protocol, address);
    return result.ok ? result.protocol : protocol;
  });
  return fc.oneof({ weight: 5, arbitrary: typed }, { weight: 1, arbitrary: dropped });
};

/** A version that a clinic could have come to, row by row. */
const protocols = fc
  .array(fc.constantFrom(...addresses).chain(stepAt), { maxLength: 6 })
  .map((steps) => steps.reduce((protocol, step) => step(protocol), exampleProtocol));

/** What other rows leave no other word for. */
const besideOthers = [
  "plain-row-missing",
  "interval-row-twice",
  "row-says-twice",
  "row-twice",
  "red-flag-not-in-table",
];

const standing = rowsOf(exampleProtocol).map(({ address }) => address);

/** A few texts that say something else than what stands in a place. */
function othersIn({ value, text }: LeafSpec): readonly string[] {
  const near = ["least" in value ? Number(text) + 1 : null, "least" in value ? Number(text) - 1 : null];
  const options = "options" in value ? value.options : [];
  const others = [
    ...near.map(String),
    ...options,
    "yes",
    "no",
    "0.07 mm",
    "3",
    "1500",
    `${text} or other`,
    `${text}\none more`,
  ];
  return others.filter((other) => other !== text);
}

/** Fields in the order of their schema: the example writes them in another. */
const inOrder = (protocol: Protocol): string => JSON.stringify(protocolSchema.parse(protocol));

const typedLines = (protocol: Protocol) =>
  fileLines(protocol).map(({ row, figure, value }, at) => ({
    line: at + 2,
    row,
    figure,
    value: String(value),
  }));

describe("laws of the rows of a version", { timeout: 30_000 }, () => {
  it("written as lines and read again it is the same", () => {
    fc.assert(
      fc.property(protocols, (protocol) => {
        expect(readFileLines(typedLines(protocol), exampleProtocol)).toEqual({ ok: true, protocol });
      }),
      { numRuns: 12 },
    );
  });

  it("the order of the lines changes nothing", () => {
    const shuffled = protocols.chain((protocol) => {
      const lines = typedLines(protocol);
      return fc.tuple(fc.constant(protocol), fc.shuffledSubarray(lines, { minLength: lines.length }));
    });
    fc.assert(
      fc.property(shuffled, ([protocol, lines]) => {
        expect(readFileLines(lines, exampleProtocol)).toEqual({ ok: true, protocol });
      }),
      { numRuns: 8 },
    );
  });

  it("every row saved as it stands changes nothing", () => {
    fc.assert(
      fc.property(protocols, (protocol) => {
        for (const { address, stands } of rowsOf(protocol))
          expect(changeRow(protocol, address, typedRow(protocol, address)), address).toEqual({
            ok: true,
            protocol,
            address: stands ? address : null,
          });
      }),
      { numRuns: 3 },
    );
  });

  it("two versions differ in words exactly where they differ", () => {
    fc.assert(
      fc.property(protocols, protocols, (stands, draft) => {
        const isSame = inOrder(stands) === inOrder(draft);
        expect(protocolChanges(stands, draft).length > 0).toBe(!isSame);
        expect(protocolChanges(draft, draft)).toEqual([]);
      }),
      { numRuns: 12 },
    );
  });

  it.each(standing)("each leaf of %s that is changed is told", (address) => {
    const texts = typedRow(exampleProtocol, address);
    const leaves = rowAt(exampleProtocol, address)?.leaves ?? [];
    const begun = blankPlaces(leaves, texts);
    // One leaf alone of a blank place of a list cannot be filled.
    for (const leaf of leaves.filter(({ path }) => !isInBlank(path, begun))) {
      const results = othersIn(leaf).map((text) =>
        changeRow(exampleProtocol, address, { ...texts, [leaf.path]: text }),
      );
      const drafts = results.flatMap((result) => (result.ok ? [result.protocol] : []));
      const codes = results.flatMap((result) => (result.ok ? [] : result.refusals.map(({ code }) => code)));
      expect(drafts.length > 0 || codes.some((code) => besideOthers.includes(code)), leaf.path).toBe(true);
      for (const draft of drafts) expect(protocolChanges(exampleProtocol, draft), leaf.path).not.toEqual([]);
    }
  });
});
