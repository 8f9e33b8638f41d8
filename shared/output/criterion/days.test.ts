import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { unknownFact } from "#shared/tube/certainty.ts";
import { criterionWhen, daily, drain, low, state, well, whole } from "#tests/factories/criterion.ts";
import { at } from "#tests/factories/reading.ts";
import * as make from "#tests/support/factories.ts";

type Asked = Parameters<typeof criterionWhen>[0];

const { upsized, repositioned, F } = make;
const asked = ({ entries = [], ...more }: Asked) =>
  criterionWhen({ entries: [drain(), ...entries, well], ...more });
const codes = (more: Asked) => asked(more).because.map(({ code }) => code);

describe("days beside a change", () => {
  it("before it are no part of what speaks against, and ask for no date of it", () => {
    const entries = [upsized({ on: "2026-11-14", size: F(12) })];
    expect(codes({ entries, readings: daily("2026-11-15", [40, 6]) })).toEqual(["too-few-days"]);
    expect(codes({ entries: [upsized({ on: "2026-11-15", size: F(12) })] })).toEqual([
      "too-few-days",
      "no-complete-day",
    ]);
  });

  it("since it count where they were measured whole, and are known to be since", () => {
    const entries = [upsized({ on: "2026-11-14", size: F(12) })];
    expect(asked({ entries, readings: daily("2026-11-13", [5]) }).because[0]).toMatchObject({ count: 0 });
    const undated = repositioned({ on: "?", recordedOn: "2026-11-15" });
    expect(asked({ entries: [...entries, undated], readings: low }).because[0]).toMatchObject({
      since: { what: "upsized" },
      count: 0,
    });
    expect(asked({ entries, readings: low }).because[0]).toMatchObject({ count: 1 });
  });

  it("one day before it and one that nobody measured are neither met nor too few: the other may have been low", () => {
    const entries = [repositioned({ on: "2026-11-13" })];
    expect(asked({ entries, readings: daily("2026-11-14", [5, 5]) })).toMatchObject({
      kind: "cannot tell",
      because: [{ code: "day-unknown", day: "2026-11-15", faults: ["no-reading"] }],
    });
  });

  it("too few names the change that a day is not known to have come after", () => {
    const both = [
      repositioned({ on: "2026-11-14" }),
      upsized({ on: "2026-11-14", at: "00:00", size: F(12) }),
    ];
    expect(asked({ entries: both, readings: low }).because[0]).toMatchObject({
      since: { what: "repositioned" },
    });
  });
});

describe("days that were looked at", () => {
  it("are the ended ones where something speaks against, and where none is complete", () => {
    // Nothing of Sun 15; Sat 14 was 40: two running are not low, whatever Sunday was.
    expect(asked({ readings: daily("2026-11-14", [5, 40]) }).evidence.days).toEqual([
      { day: "2026-11-15", state: "cannot tell", mlPer24h: null },
      { day: "2026-11-14", state: "not low", mlPer24h: 40 },
    ]);
    expect(asked({}).evidence.days).toEqual([
      { day: "2026-11-15", state: "cannot tell", mlPer24h: null },
      { day: "2026-11-14", state: "cannot tell", mlPer24h: null },
    ]);
    expect(asked({ readings: daily("2026-11-14", [5, 6]) }).evidence.days).toEqual([
      { day: "2026-11-14", state: "low", mlPer24h: 6 },
      { day: "2026-11-13", state: "low", mlPer24h: 5 },
    ]);
  });

  it("part of a day has no figure of a day", () => {
    const entries = [drain({ on: "2026-11-15", at: "10:00" }), well];
    const readings = [whole("2026-11-15", 5, { from: at("2026-11-15T10:00Z") })];
    expect(criterionWhen({ entries, readings }).evidence.days[0]).toEqual({
      day: "2026-11-15",
      state: "cannot tell",
      mlPer24h: null,
    });
  });

  it("each fault is told once, of three running", () => {
    const protocol = { ...exampleProtocol, output: { ...exampleProtocol.output, lowDays: 3 } };
    // Nothing of the 15th, 5 on the 14th, an estimate on the 13th, 40 on the 12th.
    const readings = [
      whole("2026-11-12", 40),
      whole("2026-11-13", 5, { measuredBy: "estimate" }),
      whole("2026-11-14", 5),
    ];
    expect(asked({ readings, protocol }).because).toEqual([
      { code: "day-unknown", day: "2026-11-15", faults: ["no-reading"] },
      { code: "day-unknown", day: "2026-11-13", faults: ["estimated"] },
      { code: "day-not-low", day: "2026-11-12", mlPer24h: 40, underMl: 10 },
    ]);
  });

  it("what ran later is held against the row day by day", () => {
    const part = (on: string, ml: number) => whole(on, ml, { to: at(`${on}T09:00Z`) });
    const two = [...daily("2026-11-14", [8, 6]), part("2026-11-15", 6), part("2026-11-16", 6)];
    expect(asked({ readings: two }).kind).toBe("numeric part met");
  });
});

describe("two drains in one cavity", () => {
  const cavity = "left flank";
  const second = { tube: "tube-2", number: 2 };
  const entries = [drain({ cavity }), drain({ cavity, ...second })];
  const of = (more: Asked) =>
    criterionWhen({ ...more, entries: [...entries, ...(more.entries ?? []), well] });
  const both = (...more: Parameters<typeof whole>[]) => [
    ...daily("2026-11-15", [4, 4]),
    ...more.map((one) => whole(one[0], one[1], { tubeId: "tube-2", ...one[2] })),
  ];

  it("a day that is not complete of each has no figure", () => {
    const hour = { to: at("2026-11-15T23:00Z") };
    const gap = of({ readings: both(["2026-11-14", 5], ["2026-11-15", 1, hour]) });
    expect(gap.kind).toBe("cannot tell");
    const unknown = of({ readings: both(["2026-11-14", 5], ["2026-11-15", 1, { gross: unknownFact }]) });
    expect(unknown.evidence.days[0]).toEqual({
      day: "2026-11-14",
      state: "low",
      mlPer24h: 9,
    });
    const one = of({ readings: both(["2026-11-15", 5]) });
    expect(one.evidence.days).toEqual([
      { day: "2026-11-15", state: "low", mlPer24h: 9 },
      { day: "2026-11-14", state: "cannot tell", mlPer24h: null },
    ]);
  });

  it("one that came out long ago is neither in the sum nor asked for", () => {
    const gone = [make.removed({ tube: "tube-2", on: "2026-11-10" })];
    expect(of({ entries: gone, readings: low })).toMatchObject({ kind: "numeric part met", beside: [] });
  });

  it("names both by their number, whichever is asked for, and what went wrong with the other", () => {
    const readings = both(["2026-11-14", 5], ["2026-11-15", 5]);
    expect(of({ readings, tube: "tube-2" }).beside).toEqual([{ code: "cavity-sum", tubes: [1, 2] }]);
    const leaking = [make.leaking({ tube: "tube-2", on: "2026-11-15" })];
    expect(of({ entries: leaking, readings }).because).toEqual([
      { code: "trouble", trouble: "leaking", tube: 2 },
    ]);
    expect(of({ entries: leaking, readings, tube: "tube-2" }).because).toEqual([
      { code: "trouble", trouble: "leaking", tube: null },
    ]);
  });

  it("the last change of either begins the count", () => {
    const changes = [
      upsized({ on: "2026-11-14", size: F(12) }),
      upsized({ tube: "tube-2", on: "2026-11-13", size: F(12) }),
    ];
    const readings = both(["2026-11-14", 5], ["2026-11-15", 5]);
    expect(of({ entries: changes, readings }).because[0]).toMatchObject({
      since: { when: { earliest: "2026-11-14" } },
      tube: null,
    });
  });

  it("a plateau is of days that both were measured on", () => {
    const readings = [
      ...daily("2026-11-15", [60, 60, 60, 60, 60, 60]),
      ...daily("2026-11-15", [5, 5, 5, 5], { tubeId: "tube-2" }),
      whole("2026-11-11", 5, { tubeId: "tube-2", to: at("2026-11-11T23:00Z") }),
    ];
    expect(of({ readings }).beside.map(({ code }) => code)).not.toContain("plateau");
    const full = [...readings.slice(0, -1), whole("2026-11-11", 5, { tubeId: "tube-2" })];
    expect(of({ readings: full }).beside).toContainEqual(
      expect.objectContaining({ code: "plateau", covered: 5 }),
    );
  });
});

describe("the table", () => {
  it("that is approved says so", () => {
    const approved = { by: "Dr. Orla Invented", on: "2026-11-01" } as never;
    expect(asked({ readings: low, protocol: { ...exampleProtocol, approved } }).row?.approved).toBe(true);
  });

  it("stored before there were rows of output has none for an age, a fever or a plateau", () => {
    const protocol = { ...exampleProtocol, outputRows: null };
    expect(asked({ readings: daily("2026-11-15", [60, 60, 60, 60, 6, 6]), protocol })).toMatchObject({
      kind: "cannot tell",
      because: [
        { code: "no-row", of: "age of the last complete day" },
        { code: "no-row", of: "fever" },
        { code: "no-row", of: "age of the clinical state" },
      ],
      beside: [],
    });
    const chest = [drain({ kind: "chest tube", side: "left" })];
    const pleural = [drain({ kind: "tunnelled pleural catheter", side: "left" })];
    for (const entries of [chest, pleural])
      expect(criterionWhen({ entries, readings: low, protocol })).toMatchObject({
        because: [{ code: "no-row", of: "for this kind" }],
        beside: [],
      });
  });

  it("without a row for a plateau tells of none", () => {
    const outputRows = { ...exampleProtocol.outputRows!, plateau: null };
    const week = daily("2026-11-15", [60, 60, 60, 60, 60, 60, 60]);
    expect(asked({ readings: week, protocol: { ...exampleProtocol, outputRows } }).beside).toEqual([]);
  });
});

describe("told beside", () => {
  const aged = (days: number | null) => ({
    ...exampleProtocol,
    intervals: exampleProtocol.intervals.map((row) =>
      row.kind === "abscess drain" ? { ...row, notRemovedBefore: days } : row,
    ),
  });
  const takenOver = make.takenOver({
    kind: "abscess drain",
    side: "not sided",
    on: "?",
    recordedOn: "2026-11-01",
  });

  it("the age of the tract, up to the day on which it is reached (punctured on 1 Nov, today the 16th)", () => {
    expect(asked({ readings: low, protocol: aged(15) }).beside).toEqual([]);
    expect(asked({ readings: low, protocol: aged(16) }).beside).toEqual([
      { code: "tract-too-young", until: "2026-11-17", days: 16 },
    ]);
  });

  it("counts from what is known to have lain in it, and asks for nothing without a row", () => {
    // The puncture is of no known day, the catheter of the 10th: the tract is at least as old.
    const dated = [make.takenOver({ kind: "abscess drain", side: "not sided", on: "2026-11-10" }), well];
    expect(criterionWhen({ entries: dated, readings: low, protocol: aged(21) }).beside).toEqual([
      { code: "tract-too-young", until: "2026-12-01", days: 21 },
    ]);
    expect(criterionWhen({ entries: [takenOver, well], readings: low, protocol: aged(null) }).beside).toEqual(
      [],
    );
    const none = { ...exampleProtocol, intervals: [] };
    expect(asked({ readings: low, protocol: none }).beside).toEqual([]);
  });

  it("how many readings count in no day; two that disagree count in theirs", () => {
    const coming = [whole("2026-11-20", 8), whole("2026-11-21", 8)];
    expect(asked({ readings: [...low, ...coming] }).beside).toEqual([
      { code: "readings-not-placed", count: 2 },
    ]);
    expect(asked({ readings: [...low, whole("2026-11-15", 7, { id: "again" })] }).beside).toEqual([]);
  });
});

describe("the patient", () => {
  it("an unknown temperature is not known, and unwell is not very unwell", () => {
    const of = (findings: Parameters<typeof state>[0]) =>
      criterionWhen({ entries: [drain(), state(findings)], readings: low });
    expect(of({ temperature: unknownFact }).because).toEqual([
      { code: "clinical-unknown", item: "temperature" },
    ]);
    expect(of({ feels: { certainty: "confirmed", value: "unwell" } }).kind).toBe("numeric part met");
  });
});
