import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { criterionWhen, daily, drain, figure, low, said, state, well } from "#tests/factories/criterion.ts";
import { at } from "#tests/factories/reading.ts";
import * as make from "#tests/support/factories.ts";

const { upsized } = make;
/** The verdict of two low days and this state. */
const withState = (...entries: readonly make.Entry[]) =>
  said({ entries: [drain(), ...entries], readings: low });

describe("the patient beside the figure: clinical state no older than 72 h (practice)", () => {
  it("hard case 17: low, and a fever: the number is not enough", () => {
    expect(withState(state({ temperature: figure(38) }))).toBe(
      "Cannot tell: temperature 38 °C, Mon 16 Nov 2026.",
    );
    expect(withState(state({ temperature: figure(37.9) }))).toMatch(/^Numeric part met/);
    expect(withState(state({ chills: confirmed(true) }))).toBe(
      "Cannot tell: shaking chills, Mon 16 Nov 2026.",
    );
    expect(withState(state({ feels: confirmed("very unwell") }))).toMatch(/feels very unwell/);
  });

  it.each([
    ["larger", "cannot tell"],
    ["unchanged", "cannot tell"],
    ["smaller", "numeric part met"],
    ["collection gone", "numeric part met"],
  ] as const)("hard case 17: the newest imaging says %s: %s", (finding, kind) => {
    const imaging = confirmed({ on: day("2026-11-12"), finding, words: null });
    const entries = [drain(), state({ imaging })];
    const criterion = criterionWhen({ entries, readings: low });
    expect(criterion.kind).toBe(kind);
    if (kind === "cannot tell")
      expect(criterion.because[0]).toEqual({ code: "imaging-against", finding, day: "2026-11-12" });
  });

  it("hard case 17: unknown, estimated or too old is cannot tell", () => {
    expect(withState()).toBe("Cannot tell: temperature not known.");
    expect(withState(state({ chills: unknownFact }))).toBe("Cannot tell: shaking chills not known.");
    expect(
      withState(state({ temperature: { certainty: "estimated", value: { value: 37, asTyped: null } } })),
    ).toBe("Cannot tell: temperature not known.");
    // Found on the 13th at 08:00: 72 h old on the 16th at 08:00.
    const asked = { entries: [drain(), state({}, "2026-11-13")], readings: low };
    expect(criterionWhen({ ...asked, now: at("2026-11-16T08:00Z") }).kind).toBe("numeric part met");
    expect(said({ ...asked, now: at("2026-11-16T08:00:01Z") })).toBe(
      "Cannot tell: temperature of Fri 13 Nov 2026, over 72 h old.",
    );
  });

  it("a proven not met stands before what is not known of the patient", () => {
    const { kind, because } = criterionWhen({ entries: [drain()], readings: daily("2026-11-15", [8, 40]) });
    expect(kind).toBe("not met");
    expect(because.map(({ code }) => code)).toEqual(["day-not-low", "clinical-unknown", "clinical-unknown"]);
  });
});

describe("hard case 14: two drains in one cavity", () => {
  const cavity = "left paracolic";
  const entries = [
    drain({ cavity }),
    drain({ cavity: " Left  Paracolic ", tube: "tube-2", number: 2 }),
    well,
  ];
  const both = (first: readonly number[], second: readonly number[]) => [
    ...daily("2026-11-15", first),
    ...daily("2026-11-15", second, { tubeId: "tube-2" }),
  ];

  it("8 mL each is 16: the criterion looks at the sum, from either tube", () => {
    for (const tube of ["tube-1", "tube-2"])
      expect(said({ entries, tube, readings: both([8, 8], [8, 8]) })).toBe(
        "Numeric part not met: Sun 15 Nov 2026 16 mL/24 h, not under 10.",
      );
    // 4 + 5 = 9
    const met = criterionWhen({ entries, readings: both([4, 4], [5, 5]) });
    expect(met).toMatchObject({ kind: "numeric part met", beside: [{ code: "cavity-sum", tubes: [1, 2] }] });
    expect(met.because[0]).toMatchObject({ mlPer24h: 9 });
  });

  it.each([" Left  Paracolic ", "leftparacolic", "LEFT PARA COLIC", "left\u00a0paracolic"])(
    "%j is the same cavity",
    (name) => {
      const named = [drain({ cavity }), drain({ cavity: name, tube: "tube-2", number: 2 }), well];
      expect(criterionWhen({ entries: named, readings: both([8, 8], [8, 8]) }).kind).toBe("not met");
    },
  );

  it("several that may lie in it are told by their numbers in order", () => {
    const others = [10, 2, 3].map((number) => drain({ tube: `tube-${number}`, number }));
    expect(said({ entries: [drain({ cavity }), ...others, well], readings: low })).toBe(
      "Cannot tell: not recorded whether tube 2, tube 3 and tube 10 lie in the same cavity.",
    );
  });

  it("a day counts only where it is complete for every one of them", () => {
    expect(said({ entries, readings: both([4, 4], [5]) })).toBe("Cannot tell: Sat 14 Nov 2026: no entry.");
    expect(criterionWhen({ entries, readings: daily("2026-11-15", [4, 4]) }).because[0]).toEqual({
      code: "no-complete-day",
    });
  });

  it("a change of one of them, or one that came out, begins the count of both anew", () => {
    const changed = [...entries, upsized({ tube: "tube-2", on: "2026-11-14", size: make.F(12) })];
    expect(said({ entries: changed, readings: both([4, 4], [5, 5]) })).toBe(
      "Numeric part not met: tube 2 upsized on Sat 14 Nov 2026, one complete day since.",
    );
    const out = [...entries, make.removed({ tube: "tube-2", on: "2026-11-15" })];
    expect(said({ entries: out, readings: both([4, 4], [50, 50]) })).toBe(
      "Numeric part not met: tube 2 removed on Sun 15 Nov 2026, no complete days since.",
    );
  });

  it("one that is shut is no part of the sum, and is told", () => {
    const capped = [...entries, make.capped({ tube: "tube-2", on: "2026-11-12" })];
    const criterion = criterionWhen({ entries: capped, readings: daily("2026-11-15", [4, 4]) });
    expect(criterion).toMatchObject({
      kind: "numeric part met",
      beside: [{ code: "cavity-shut", tubes: [2] }],
    });
  });

  it("tubes of other cavities stand alone", () => {
    const apart = [drain({ cavity }), drain({ cavity: "pelvic", tube: "tube-2", number: 2 }), well];
    expect(criterionWhen({ entries: apart, readings: both([8, 8], [8, 8]) }).kind).toBe("numeric part met");
  });

  it.each([
    ["neither", undefined, undefined],
    ["only the first", cavity, undefined],
    ["only the second", undefined, cavity],
  ])("where %s of two drains has its cavity written down, the sum cannot be told", (_name, first, second) => {
    const entries = [drain({ cavity: first }), drain({ cavity: second, tube: "tube-2", number: 2 }), well];
    expect(said({ entries, readings: both([8, 8], [8, 8]) })).toBe(
      "Cannot tell: not recorded whether tube 2 lies in the same cavity.",
    );
    // Too much is too much, whatever the other drains.
    expect(criterionWhen({ entries, readings: both([8, 12], [8, 8]) }).kind).toBe("not met");
    const gone = [...entries, make.removed({ tube: "tube-2", on: "2026-11-10" })];
    expect(criterionWhen({ entries: gone, readings: daily("2026-11-15", [8, 8]) }).kind).toBe(
      "numeric part met",
    );
  });

  it("one that was only told out may still drain: its days are asked for", () => {
    const told = [...entries, make.removed({ tube: "tube-2", on: "2026-11-10", toldBy: "the ward" })];
    expect(criterionWhen({ entries: told, readings: daily("2026-11-15", [4, 4]) }).kind).toBe("cannot tell");
  });
});
