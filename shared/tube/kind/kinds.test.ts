import { describe, expect, it } from "vitest";
import { plainWord } from "#shared/record/field/match-word.ts";
import { kindOf, tubeKinds } from "./kinds.ts";

const everyWord = tubeKinds.flatMap((kind) => {
  const { name, shortForms } = kindOf(kind);
  return [...new Set([name, ...shortForms])].map((word) => ({ kind, word: word.toLowerCase() }));
});

describe("the kinds", () => {
  it.each(tubeKinds)("%s has a name, short forms, and rows with ids of their own", (kind) => {
    const { name, shortForms, rows, usualFrench } = kindOf(kind);
    expect(name).toMatch(/^[a-z]/);
    expect(new Set(shortForms.map(plainWord)).size).toBe(shortForms.length);
    expect(rows.length).toBeGreaterThan(0);
    const [from, to] = usualFrench ?? [0, 0];
    expect(from).toBeLessThanOrEqual(to);
  });

  it("have row ids that come once", () => {
    const ids = tubeKinds.flatMap((kind) => kindOf(kind).rows.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("share only the short forms that do not say which is meant", () => {
    const kindsOf = (word: string) => everyWord.filter((each) => each.word === word).map(({ kind }) => kind);
    const shared = [...new Set(everyWord.map(({ word }) => word))].filter((word) => kindsOf(word).length > 1);
    const gastrostomies = ["balloon gastrostomy", "loop gastrostomy", "bumper gastrostomy"];
    const ducts = ["external biliary drain", "internal-external biliary drain"];
    expect(Object.fromEntries(shared.map((word) => [word, kindsOf(word)]))).toEqual({
      gastrostomy: gastrostomies,
      g: gastrostomies,
      "g tube": gastrostomies,
      gtube: gastrostomies,
      "gastrostomy tube": gastrostomies,
      ptbd: ducts,
      "biliary drain": ducts,
      "biliary tube": ducts,
      "biliary catheter": ducts,
      "ptc drain": ducts,
    });
  });

  it("ask role and mode of the kind that has no usual ones, and of no other", () => {
    expect(tubeKinds.filter((kind) => kindOf(kind).role === null)).toEqual(["other"]);
    expect(tubeKinds.filter((kind) => kindOf(kind).mode === null)).toEqual(["other"]);
  });

  it.each(tubeKinds.filter((kind) => kindOf(kind).role === "internal"))(
    "%s lies wholly inside: no output, no flush, nothing that falls out at the skin",
    (kind) => {
      const { outside, output, flush, expectedFluid, ifOut } = kindOf(kind);
      expect({ outside, output, flush, expectedFluid, ifOut }).toEqual({
        outside: false,
        output: null,
        flush: null,
        expectedFluid: [],
        ifOut: null,
      });
    },
  );
});
