import { describe, expect, it } from "vitest";
import { voidedByDay } from "#shared/clinical/voided-by-day.ts";
import { outputOfTube } from "#shared/output/output-of-tube.ts";
import type { Reading } from "#shared/output/reading.ts";
import { unknownFact } from "#shared/tube/certainty.ts";
import { fold } from "#shared/tube/fold.ts";
import { daily, figure, noon, state, utc, whole } from "#tests/factories/criterion.ts";
import { at, reading } from "#tests/factories/reading.ts";
import {
  amended,
  capped,
  type Entry,
  exchanged,
  placed,
  removed,
  voided as takenOut,
  trialStarted,
  uncapped,
} from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { drainsUrine, urineByRoute } from "./urine-by-route.ts";

const left = placed({ tube: "left", kind: "nephrostomy", side: "left", on: "2026-11-01" });
const right = placed({ tube: "right", number: 2, kind: "nephrostomy", side: "right", on: "2026-11-01" });
/** 24 hours' voided volume in mL, noted for that day. */
const voids = (ml: number, on: string): Entry => state({ voidedVolume: figure(ml) }, on);

type Asked = {
  readonly entries: readonly Entry[];
  readonly readings: readonly Reading[];
  readonly most?: number;
};

/** Days of urine as of noon of Mon 16 Nov 2026. */
function urineOf({ entries, readings, most = 1 }: Asked) {
  const events = history(...entries);
  const asked = { zone: utc, now: noon, row: { flushDoesNotComeBackMl: -10 } };
  const tubes = fold(events)
    .tubes.filter(drainsUrine)
    .map((tube) => ({
      tube,
      days: outputOfTube(tube, { ...asked, readings: readings.filter(({ tubeId }) => tubeId === tube.id) })
        .days,
    }));
  return urineByRoute({ tubes, voided: voidedByDay(events), zone: utc, now: noon }, most);
}

const of = (tubeId: string, ml: number, day = "2026-11-15", said: Partial<Reading> = {}): Reading =>
  whole(day, ml, { tubeId, characters: ["urine-like"], ...said });

const both = [of("left", 900), of("right", 400)];

describe("left, right and voided", () => {
  it("of a day that is known by every route are summed", () => {
    const [day] = urineOf({ entries: [left, right, voids(250, "2026-11-15")], readings: both });
    expect(day).toEqual({
      day: "2026-11-15",
      routes: [
        { tubeId: "left", figure: { kind: "known", mlPer24h: 900, remarks: [] } },
        { tubeId: "right", figure: { kind: "known", mlPer24h: 400, remarks: [] } },
      ],
      voided: { kind: "known", mlPer24h: 250, remarks: [] },
      sum: { kind: "known", mlPer24h: 1550 },
      remarks: [],
    });
  });

  it.each([
    ["what was voided", [left, right], both, ["voided"]],
    [
      "voiding that is noted as not known",
      [left, right, state({ voidedVolume: unknownFact }, "2026-11-15")],
      both,
      ["voided"],
    ],
    ["one tube", [left, right, voids(250, "2026-11-15")], both.slice(0, 1), ["right"]],
    ["voiding of another day", [left, right, voids(250, "2026-11-14")], both, ["voided"]],
    ["everything", [left, right], [of("left", 900, "2026-11-14")], ["left", "right", "voided"]],
  ] as const)("without %s cannot be told, and are never smaller", (_name, entries, readings, missing) => {
    expect(urineOf({ entries, readings })[0]?.sum).toEqual({ kind: "cannot tell", missing });
  });

  it("a measured nothing is a figure: anuria is told, what is missing is not", () => {
    const nothing = [of("left", 0), of("right", 0)];
    expect(urineOf({ entries: [left, right, voids(0, "2026-11-15")], readings: nothing })[0]?.sum).toEqual({
      kind: "known",
      mlPer24h: 0,
    });
  });

  it("a day that is measured in part, or without the flush that was ordered, is no figure", () => {
    const entries = [left, right, voids(250, "2026-11-15")];
    const half = reading({
      tubeId: "right",
      from: at("2026-11-15T00:00Z"),
      to: at("2026-11-15T12:00Z"),
      zone: utc,
    });
    expect(urineOf({ entries, readings: [of("left", 900), half] })[0]?.routes[1]?.figure).toEqual({
      kind: "cannot tell",
      because: ["gap"],
    });
    const untold = of("right", 400, "2026-11-15", { flushGiven: "not recorded" });
    expect(urineOf({ entries, readings: [of("left", 900), untold] })[0]).toMatchObject({
      routes: [{}, { figure: { kind: "cannot tell", because: ["flush-not-recorded"] } }],
      sum: { kind: "cannot tell", missing: ["right"] },
    });
  });

  it("a tube before its placement and after its removal brought none; on the days of both nobody can tell", () => {
    const late = placed({ tube: "right", number: 2, side: "right", on: "2026-11-14" });
    const entries = [left, late, removed({ tube: "right", on: "2026-11-15" })];
    const readings = daily("2026-11-15", [900, 900, 900], { tubeId: "left" });
    const figures = urineOf({ entries, readings, most: 3 }).map(({ routes }) => routes[1]?.figure.kind);
    expect(figures).toEqual(["cannot tell", "cannot tell", "not in"]);
    const before = [left, right, removed({ tube: "right", on: "2026-11-14" }), voids(100, "2026-11-15")];
    expect(urineOf({ entries: before, readings })[0]?.sum).toEqual({ kind: "known", mlPer24h: 1000 });
  });

  it("a tube that was capped before the day brought none; on the day of the cap, and by what is logged all the same, it counts", () => {
    const shut = capped({ tube: "right", on: "2026-11-14", at: "10:00" });
    const entries = [left, right, shut, voids(300, "2026-11-15"), voids(300, "2026-11-14")];
    const readings = daily("2026-11-15", [900, 900], { tubeId: "left" });
    const [last, before] = urineOf({ entries, readings, most: 2 });
    expect(last).toMatchObject({
      routes: [{}, { figure: { kind: "shut" } }],
      sum: { kind: "known", mlPer24h: 1200 },
    });
    expect(before?.sum).toEqual({ kind: "cannot tell", missing: ["right"] });
    const leaked = urineOf({ entries, readings: [...readings, of("right", 40)] });
    expect(leaked[0]?.sum).toEqual({ kind: "known", mlPer24h: 1240 });
  });

  it.each([
    ["a cap at midnight", [capped({ tube: "right", on: "2026-11-15", at: "00:00" })], "shut"],
    ["a cap a minute later", [capped({ tube: "right", on: "2026-11-15", at: "00:01" })], "cannot tell"],
    ["a clamp trial", [trialStarted({ tube: "right", on: "2026-11-14", at: "10:00" })], "shut"],
    [
      "a cap that is off again",
      [
        capped({ tube: "right", on: "2026-11-13", at: "10:00" }),
        uncapped({ tube: "right", on: "2026-11-14", at: "10:00" }),
      ],
      "cannot tell",
    ],
    [
      "a cap before another catheter, of which nobody wrote whether it is capped",
      [
        capped({ tube: "right", on: "2026-11-12", at: "10:00" }),
        exchanged({ tube: "right", on: "2026-11-13", at: "10:00" }),
      ],
      "cannot tell",
    ],
  ] as const)("shut since before the day began, %s: %s", (_name, said, kind) => {
    // What was logged before it was shut makes days that go on, without an entry.
    const readings = [...daily("2026-11-15", [900], { tubeId: "left" }), of("right", 40, "2026-11-11")];
    const [last] = urineOf({ entries: [left, right, ...said, voids(1, "2026-11-15")], readings });
    expect(last?.routes[1]?.figure.kind).toBe(kind);
  });

  it("of a tube of which nothing was ever logged says so, and of a day without a figure there is nothing more to say", () => {
    const [last] = urineOf({ entries: [left, right], readings: [of("left", 900)] });
    expect(last?.routes[1]?.figure).toEqual({ kind: "cannot tell", because: ["no-reading"] });
    expect(last?.voided).toEqual({ kind: "missing" });
    expect(last?.remarks).toEqual([]);
  });

  it("on the day of its placement it was not there all day, however much was measured since", () => {
    const late = placed({ tube: "left", kind: "nephrostomy", side: "left", on: "2026-11-15", at: "10:00" });
    const since = reading({
      tubeId: "left",
      from: at("2026-11-15T10:00Z"),
      to: at("2026-11-16T00:00Z"),
      zone: utc,
    });
    expect(urineOf({ entries: [late], readings: [since] })[0]?.routes[0]?.figure).toEqual({
      kind: "cannot tell",
      because: ["part-of-a-day"],
    });
  });

  it("an exchange in the middle of a day leaves the day's urine known where both parts are measured", () => {
    const entries = [
      left,
      exchanged({ tube: "left", on: "2026-11-15", at: "10:00" }),
      voids(0, "2026-11-15"),
    ];
    expect(urineOf({ entries, readings: [of("left", 960)] })[0]?.sum).toEqual({
      kind: "known",
      mlPer24h: 960,
    });
  });

  it("is scaled to 24 hours on a day of 25", () => {
    // London's clocks went back on Sun 25 Oct 2026.
    const entries = [placed({ tube: "left", kind: "nephrostomy", side: "left", on: "2026-10-01" })];
    const [tube] = fold(history(...entries)).tubes;
    if (tube === undefined) throw new Error("the tube is placed");
    const zone = "Europe/London" as typeof utc;
    const one = reading({ tubeId: "left", from: at("2026-10-24T23:00Z"), to: at("2026-10-26T00:00Z"), zone });
    const now = at("2026-10-26T12:00Z");
    const { days } = outputOfTube(tube, { zone, now, readings: [one], row: { flushDoesNotComeBackMl: -10 } });
    const [day] = urineByRoute({ tubes: [{ tube, days }], voided: new Map(), zone, now }, 1);
    expect(day?.routes[0]?.figure).toMatchObject({ kind: "known", mlPer24h: 24 });
  });

  it("carries what is to be said of any figure", () => {
    const about = { voidedVolume: { certainty: "estimated", value: { value: 250, asTyped: null } } } as const;
    const entries = [left, right, state(about, "2026-11-15")];
    const leaky = of("right", 400, "2026-11-15", { leak: "soaking" });
    expect(urineOf({ entries, readings: [of("left", 900), leaky] })[0]?.remarks).toEqual([
      "leak-round-tube",
      "estimated",
    ]);
  });

  it("says of a voided volume that it was only told", () => {
    const about = { voidedVolume: { certainty: "reported", value: { value: 250, asTyped: null } } } as const;
    const entries = [left, right, state(about, "2026-11-15")];
    expect(urineOf({ entries, readings: both })[0]?.remarks).toEqual(["reported"]);
  });

  it("ends with yesterday and begins with the first day that anything was logged", () => {
    const readings = daily("2026-11-15", [900, 900, 900], { tubeId: "left" });
    expect(urineOf({ entries: [left], readings, most: 14 }).map(({ day }) => day)).toEqual([
      "2026-11-15",
      "2026-11-14",
      "2026-11-13",
    ]);
    expect(urineOf({ entries: [left], readings: [], most: 14 })).toEqual([]);
  });
});

describe("what was voided, by day", () => {
  const ofDay = (...entries: readonly Entry[]) => [...voidedByDay(history(left, ...entries))];

  it("is the newest note of each day, as it was last put right, without what was taken out", () => {
    const first = { ...state({ voidedVolume: figure(250) }, "2026-11-14"), id: "first" };
    const second = { ...state({ voidedVolume: figure(300) }, "2026-11-14"), id: "second" };
    expect(ofDay(first, second)).toEqual([["2026-11-14", figure(300)]]);
    expect(ofDay(first, second, takenOut("second", { on: "2026-11-14" }))).toEqual([
      ["2026-11-14", figure(250)],
    ]);
    const right = state({ voidedVolume: figure(275) }, "2026-11-14");
    expect(ofDay(first, amended("first", right, { on: "2026-11-14" }))).toEqual([
      ["2026-11-14", figure(275)],
    ]);
  });

  it("is none of a day that nobody knows, and none where nothing was said of it", () => {
    expect(ofDay(state({ voidedVolume: figure(250) }, "2026-11"))).toEqual([]);
    expect(ofDay(state({ temperature: figure(37) }, "2026-11-14"))).toEqual([]);
  });
});

describe("ways of urine", () => {
  it.each([
    ["nephrostomy", true],
    ["nephroureteral catheter", true],
    ["conduit catheter", true],
    ["suprapubic catheter", true],
    ["ureteral stent", false],
    ["external biliary drain", false],
    ["abscess drain", false],
  ] as const)("%s: %s", (kind, drains) => {
    expect(drainsUrine({ kind })).toBe(drains);
  });
});
