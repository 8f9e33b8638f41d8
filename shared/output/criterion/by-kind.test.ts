import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { millilitres } from "#shared/output/microlitre.ts";
import type { Reading } from "#shared/output/reading.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import { criterionWhen, daily, drain, low, said, state, well, whole } from "#tests/factories/criterion.ts";
import { at, gross } from "#tests/factories/reading.ts";
import * as make from "#tests/support/factories.ts";

describe("where no volume says anything", () => {
  it.each<TubeKind>([
    "nephrostomy",
    "cholecystostomy",
    "external biliary drain",
    "internal-external biliary drain",
    "suprapubic catheter",
    "ureteral stent",
    "balloon gastrostomy",
    "venting gastrostomy",
    "cecostomy",
  ])("%s: this kind never by volume", (kind) => {
    const criterion = criterionWhen({ entries: [drain({ kind }), well], readings: low });
    expect(criterion).toMatchObject({
      kind: "does not apply",
      because: [{ code: "never-by-volume" }],
      row: null,
    });
  });

  it("hard case 15: a biloma drain beside a biliary drain goes by its own row, the biliary drain by none", () => {
    const entries = [
      drain({ cavity: "right lobe" }),
      drain({ kind: "external biliary drain", tube: "tube-2", number: 2, cavity: "right lobe" }),
      well,
    ];
    const readings = [...low, ...daily("2026-11-15", [400, 420], { tubeId: "tube-2" })];
    expect(criterionWhen({ entries, readings })).toMatchObject({ kind: "numeric part met", beside: [] });
    expect(criterionWhen({ entries, readings, tube: "tube-2" }).kind).toBe("does not apply");
  });

  it.each([
    ["capped", make.capped({ on: "2026-11-10" })],
    ["on a clamp trial", make.trialStarted({ on: "2026-11-10" })],
  ])("hard case 4: %s, it shows zero and means to", (mode, shutting) => {
    const entries = [drain(), shutting, well];
    expect(criterionWhen({ entries, readings: daily("2026-11-15", [0, 0]) })).toMatchObject({
      kind: "does not apply",
      because: [{ code: "shut", mode }],
    });
  });

  it("a tube that is out has no criterion", () => {
    const entries = [drain(), make.fellOut({ on: "2026-11-15" }), well];
    expect(said({ entries, readings: low })).toBe("Does not apply: it is not in place (out, undecided).");
  });

  it.each([
    ["for a child", { age: "under 18" as const }],
    ["for this kind", { entries: [drain({ kind: "tunnelled peritoneal drain" }), well] }],
  ])("no row %s: cannot tell", (of, asked) => {
    expect(criterionWhen({ readings: low, ...asked })).toMatchObject({
      kind: "cannot tell",
      because: [{ code: "no-row", of }],
    });
  });

  it("no row for an age, or for a fever: cannot tell", () => {
    const { outputRows } = exampleProtocol;
    if (outputRows === null) throw new Error("the example has rows");
    const without = (row: "lastCompleteDayHours" | "clinicalStateHours" | "fever") =>
      criterionWhen({
        readings: low,
        protocol: { ...exampleProtocol, outputRows: { ...outputRows, [row]: null } },
      });
    expect(without("lastCompleteDayHours").because[0]).toEqual({
      code: "no-row",
      of: "age of the last complete day",
    });
    expect(without("clinicalStateHours").because[0]).toEqual({
      code: "no-row",
      of: "age of the clinical state",
    });
    expect(without("fever").because[0]).toEqual({ code: "no-row", of: "fever" });
  });
});

describe("a chest tube: no air leak for 24 h, under 100 mL/24 h, lung up on film (memory)", () => {
  const up = (finding: "lung up" | "lung not up" | "smaller", on = "2026-11-15") =>
    state({ imaging: confirmed({ on: day(on), finding, words: null }) });
  const chest = (film: make.Entry | null, readings: readonly Reading[]) => ({
    entries: [drain({ kind: "chest tube", side: "left" }), ...(film === null ? [] : [film])],
    readings,
  });
  const dry = (said: Partial<Reading> = {}) => daily("2026-11-15", [99], { airLeak: "none", ...said });

  it("is met by all three", () => {
    const criterion = criterionWhen(chest(up("lung up"), dry()));
    expect(criterion).toMatchObject({
      kind: "numeric part met",
      row: { what: "chest tube", underMl: 100, noAirLeakHours: 24 },
    });
  });

  it("an air leak stands before everything", () => {
    expect(said(chest(null, dry({ airLeak: "present" })))).toBe(
      "Numeric part not met: air leak seen Mon 16 Nov 2026, 00:00.",
    );
  });

  it("100 mL is not under 100", () => {
    expect(said(chest(up("lung up"), daily("2026-11-15", [100], { airLeak: "none" })))).toBe(
      "Numeric part not met: Sun 15 Nov 2026 100 mL/24 h, not under 100.",
    );
  });

  it("an air leak that nobody wrote down, or not for all of 24 h, is not known", () => {
    expect(said(chest(up("lung up"), dry({ airLeak: "not recorded" })))).toBe(
      "Cannot tell: air leak not recorded for all of 24 h.",
    );
    // Up to 09:00 of the 16th, but nothing from 00:00 to 03:00.
    const late = whole("2026-11-16", 20, {
      from: at("2026-11-16T03:00Z"),
      to: at("2026-11-16T09:00Z"),
      airLeak: "none",
    });
    expect(said(chest(up("lung up"), [...dry(), late]))).toMatch(/air leak not recorded/);
    expect(said(chest(up("lung up"), []))).toMatch(/air leak not recorded/);
  });

  it("the film: not up is not met, none or an old one is not known", () => {
    expect(said(chest(up("lung not up"), dry()))).toBe(
      "Numeric part not met: lung not up on the film of Sun 15 Nov 2026.",
    );
    expect(said(chest(null, dry()))).toBe("Cannot tell: no film says whether the lung is up.");
    expect(said(chest(up("smaller"), dry()))).toBe("Cannot tell: no film says whether the lung is up.");
    expect(said(chest(up("lung up", "2026-11-13"), dry()))).toBe(
      "Cannot tell: the film of Fri 13 Nov 2026 is over 72 h old.",
    );
  });
});

describe("a tunnelled pleural catheter: under 50 mL on 3 sessions running, no symptoms (memory)", () => {
  const entries = [drain({ kind: "tunnelled pleural catheter", side: "right" })];
  const session = (of: string, ml: number | null, said: Partial<Reading> = {}) =>
    whole(of, ml ?? 0, {
      from: "since last emptying",
      to: at(`${of}T17:00Z`),
      symptoms: [],
      ...(ml === null ? { gross: unknownFact } : {}),
      ...said,
    });
  const three = [session("2026-11-10", 40), session("2026-11-12", 45), session("2026-11-15", 49)];

  it("hard case 18: counts sessions, not days", () => {
    const criterion = criterionWhen({ entries, readings: three });
    expect(criterion).toMatchObject({
      kind: "numeric part met",
      row: { what: "sessions", underMl: 50, running: 3 },
    });
    expect(criterion.evidence.sessions.map(({ ml }) => ml)).toEqual([49, 45, 40]);
  });

  it("hard case 18: a missed session is no low one", () => {
    expect(said({ entries, readings: three.slice(1) })).toBe(
      "Numeric part not met: placed on Sun 1 Nov 2026, two sessions since.",
    );
    // The fourth to last was 60: with one missing it is among the last three.
    const before = [session("2026-11-08", 60), ...three.slice(1)];
    expect(said({ entries, readings: before })).toBe(
      "Numeric part not met: session of Sun 8 Nov 2026, 17:00 60 mL, not under 50.",
    );
    expect(said({ entries, readings: [] })).toBe("Cannot tell: no session is recorded.");
  });

  it("what was felt: symptoms are not met, not recorded is not known", () => {
    const last = (said: Partial<Reading>) => [...three.slice(0, 2), session("2026-11-15", 30, said)];
    expect(said({ entries, readings: last({ symptoms: ["cough", "pain"] }) })).toBe(
      "Numeric part not met: session of Sun 15 Nov 2026, 17:00 with cough and pain.",
    );
    expect(said({ entries, readings: last({ symptoms: "not recorded" }) })).toBe(
      "Cannot tell: session of Sun 15 Nov 2026, 17:00: symptoms not recorded.",
    );
    expect(said({ entries, readings: last({ gross: unknownFact }) })).toMatch(/a volume is unknown/);
    expect(said({ entries, readings: last({ measuredBy: "estimate" }) })).toMatch(/: estimated/);
    expect(said({ entries, readings: last({ leak: "damp" }) })).toMatch(/it leaks round the tube/);
  });

  it("breathless since the last session", () => {
    const noted = (on: string) => state({ coughOrBreathlessness: confirmed(true) }, on);
    expect(said({ entries: [...entries, noted("2026-11-16")], readings: three })).toBe(
      "Numeric part not met: cough or breathlessness noted Mon 16 Nov 2026.",
    );
    expect(criterionWhen({ entries: [...entries, noted("2026-11-14")], readings: three }).kind).toBe(
      "numeric part met",
    );
  });

  it("a change begins the count anew, an undated one leaves it open", () => {
    const changed = [...entries, make.repositioned({ on: "2026-11-12" })];
    expect(said({ entries: changed, readings: three })).toBe(
      "Numeric part not met: repositioned on Thu 12 Nov 2026, one session since.",
    );
    const undated = [...entries, make.repositioned({ on: "?", recordedOn: "2026-11-15" })];
    expect(said({ entries: undated, readings: three })).toMatch(/^Cannot tell: whether a change/);
  });

  it("hard case 37: silence after the last session", () => {
    expect(said({ entries, readings: three, now: at("2026-11-18T17:00Z") })).toMatch(/^Numeric part met/);
    expect(said({ entries, readings: three, now: at("2026-11-18T17:01Z") })).toBe(
      "Cannot tell: the last session was Sun 15 Nov 2026, 17:00, over 72 h ago.",
    );
  });

  it("what was drawn off at the procedure is no session", () => {
    const first = session("2026-11-09", 20, { procedureAspirate: true });
    expect(criterionWhen({ entries, readings: [first, ...three.slice(1)] }).kind).toBe("not met");
  });
});

it("the age of the tract is another row, told beside", () => {
  const { intervals } = exampleProtocol;
  const protocol = {
    ...exampleProtocol,
    intervals: intervals.map((row) =>
      row.kind === "abscess drain" ? { ...row, notRemovedBefore: 21 } : row,
    ),
  };
  // Punctured on 1 Nov: 21 days are over on 22 Nov.
  expect(criterionWhen({ readings: low, protocol })).toMatchObject({
    kind: "numeric part met",
    beside: [{ code: "tract-too-young", until: "2026-11-22", days: 21 }],
  });
  const undated = [
    make.takenOver({ kind: "abscess drain", side: "not sided", on: "?", recordedOn: "2026-11-01" }),
    well,
  ];
  expect(criterionWhen({ entries: undated, readings: low, protocol }).beside).toEqual([
    { code: "tract-age-unknown", days: 21 },
  ]);
});

it("volumes are compared as they are, not as they are printed", () => {
  // 9.96 mL prints as 10 and is under it.
  const readings = [
    whole("2026-11-14", 0, { gross: confirmed(millilitres(9.96)) }),
    whole("2026-11-15", 0, { gross: gross(0) }),
  ];
  expect(criterionWhen({ readings }).kind).toBe("numeric part met");
});
