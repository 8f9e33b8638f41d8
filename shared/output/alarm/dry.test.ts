import { describe, expect, it } from "vitest";
import { millilitres, noVolume } from "#shared/output/microlitre.ts";
import type { Reading } from "#shared/output/reading.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { alarmInput, ran } from "#tests/factories/alarm-input.ts";
import { at, flush, gross } from "#tests/factories/reading.ts";
import { capped, placed, trialStarted, uncapped } from "#tests/support/factories.ts";
import { alarmReasons } from "./alarm-reasons.ts";

const codes = (...[readings, more]: Parameters<typeof alarmInput>) =>
  alarmReasons(alarmInput(readings, more)).map(({ code }) => code);
const dryFor = (minutes: number, kind: "nephrostomy" | "external biliary drain" = "nephrostomy") => {
  const to = new Date(Date.parse("2026-11-02T08:00Z") + minutes * 60_000).toISOString().slice(0, 16);
  return codes([ran("2026-11-02T08:00", to, 0)], { entries: [placed({ kind })] });
};

describe("dry by its row (example table: 6 h for urine, 12 h for bile, CP)", () => {
  it.each([
    ["nephrostomy", 359, []],
    ["nephrostomy", 360, ["dry"]],
    ["nephrostomy", 361, ["dry"]],
    ["external biliary drain", 719, []],
    ["external biliary drain", 720, ["dry"]],
    ["external biliary drain", 721, ["dry"]],
  ] as const)("%s, nothing for %i min: %j", (kind, minutes, expected) => {
    expect(dryFor(minutes, kind)).toEqual(expected);
  });

  it("case 5: nothing since last night is one reason, with its hours, its row and its source", () => {
    const [reason, ...others] = alarmReasons(
      alarmInput([
        ran("2026-11-02T22:00", "2026-11-03T02:00", 0),
        ran("2026-11-03T02:00", "2026-11-03T05:10", 0),
      ]),
    );
    expect(others).toEqual([]);
    expect(reason).toEqual({
      key: "dry:r2026-11-02T22:00",
      code: "dry",
      level: "same day",
      untilReached: "do not force the flush",
      on: "2026-11-03",
      at: at("2026-11-03T05:10Z"),
      readings: ["r2026-11-02T22:00", "r2026-11-03T02:00"],
      args: { minutes: 430, hours: 6, onlyWayOut: null, otherWays: "not known" },
      source: "CP",
    });
  });

  it("case 7: emptied at 23:50 and at 00:10 with nothing in it is no alarm after 20 minutes", () => {
    expect(
      codes([
        ran("2026-11-02T12:00", "2026-11-02T23:50", 600),
        ran("2026-11-02T23:50", "2026-11-03T00:10", 0),
      ]),
    ).toEqual([]);
  });

  it("a gap breaks it, and so does a reading of something or of nobody knows what", () => {
    const first = ran("2026-11-02T08:00", "2026-11-02T12:00", 0);
    expect(codes([first, ran("2026-11-02T12:01", "2026-11-02T16:00", 0)])).toEqual([]);
    const last = ran("2026-11-02T13:00", "2026-11-02T17:00", 0);
    expect(codes([first, ran("2026-11-02T12:00", "2026-11-02T13:00", 1), last])).toEqual([]);
    const unknown = ran("2026-11-02T12:00", "2026-11-02T13:00", 0, { gross: unknownFact });
    expect(codes([first, unknown, last])).toEqual([]);
    expect(codes([first, ran("2026-11-02T12:00", "2026-11-02T13:00", 0), last])).toEqual(["dry"]);
  });

  it("counts what went in as flush out of what came, and an estimate that comes to zero as no zero", () => {
    const hours = (more: Partial<Reading>) => codes([ran("2026-11-02T08:00", "2026-11-02T15:00", 0, more)]);
    expect(hours({ gross: gross(5), flushGiven: flush(5) })).toEqual(["dry"]);
    expect(hours({ gross: gross(5.001), flushGiven: flush(5) })).toEqual([]);
    expect(hours({ gross: gross(5), flushGiven: "not recorded" })).toEqual([]);
    expect(hours({ flushGiven: "not recorded" })).toEqual(["dry"]);
    expect(hours({ flushGiven: flush(5), flushWithdrawn: flush(6) })).toEqual([]);
    expect(hours({ gross: gross(5), flushGiven: { ul: millilitres(5), estimated: true } })).toEqual([]);
    expect(hours({ gross: gross(5), flushGiven: flush(5), measuredBy: "estimate" })).toEqual([]);
    const about = { certainty: "estimated", value: millilitres(5) } as const;
    expect(hours({ gross: about, flushGiven: flush(5) })).toEqual([]);
    const back = { ul: millilitres(1), estimated: true };
    expect(hours({ gross: gross(4), flushGiven: flush(5), flushWithdrawn: back })).toEqual([]);
    expect(hours({ gross: { certainty: "estimated", value: noVolume } })).toEqual(["dry"]);
    expect(hours({ basis: "already net", gross: gross(3), flushGiven: flush(5) })).toEqual([]);
    expect(hours({ basis: "already net", gross: gross(-5), flushGiven: flush(0) })).toEqual(["dry"]);
  });

  it("two readings that disagree on the same time count neither", () => {
    const all = ran("2026-11-02T00:00", "2026-11-03T00:00", 900);
    expect(codes([all, ran("2026-11-02T08:00", "2026-11-02T16:00", 0)])).toEqual([]);
  });

  it("a reading of something that touches it at either end says nothing of it", () => {
    const readings = [
      ran("2026-11-02T02:00", "2026-11-02T08:00", 900),
      ran("2026-11-02T08:00", "2026-11-02T15:00", 0),
      ran("2026-11-02T15:00", "2026-11-02T18:00", 200),
    ];
    expect(codes(readings)).toEqual(["dry"]);
  });

  it("is faster with one kidney, a transplant, or a tube in one", () => {
    const seven = [ran("2026-11-02T08:00", "2026-11-02T15:00", 0)];
    const level = (more: object) => alarmReasons(alarmInput(seven, more)).map((reason) => reason.level);
    expect(level({})).toEqual(["same day"]);
    expect(level({ conditions: { singleKidney: confirmed(true) } })).toEqual(["on call now"]);
    expect(level({ conditions: { transplantKidney: confirmed(true) } })).toEqual(["on call now"]);
    expect(level({ conditions: { singleKidney: unknownFact } })).toEqual(["same day"]);
    expect(level({ entries: [placed({ side: "transplant" })] })).toEqual(["on call now"]);
  });

  it("case 4: a tube that is capped or on trial shows zero and means to", () => {
    const seven = [ran("2026-11-02T08:00", "2026-11-02T15:00", 0)];
    expect(codes(seven, { entries: [placed(), capped({ on: "2026-10-30" })] })).toEqual([]);
    expect(codes(seven, { entries: [placed(), trialStarted({ on: "2026-10-30" })] })).toEqual([]);
    const again = [placed(), capped({ on: "2026-10-30" }), uncapped({ on: "2026-10-31" })];
    expect(codes(seven, { entries: again })).toEqual(["dry"]);
  });

  it("counts from the last change of the tube: hours before it were of another", () => {
    const entries = [placed(), capped({ on: "2026-11-01" }), uncapped({ on: "2026-11-02", at: "09:30" })];
    expect(codes([ran("2026-11-02T08:00", "2026-11-02T15:00", 0)], { entries })).toEqual([]);
    expect(codes([ran("2026-11-02T08:00", "2026-11-02T15:30", 0)], { entries })).toEqual(["dry"]);
  });

  it("once answered, speaks again only after the row's hours of new readings", () => {
    const seven = ran("2026-11-02T08:00", "2026-11-02T15:00", 0);
    const answered = [{ key: "dry:r2026-11-02T08:00", until: at("2026-11-02T15:00Z") }];
    const then = (to: string) =>
      alarmReasons(alarmInput([seven, ran("2026-11-02T15:00", to, 0)], { answered }));
    expect(alarmReasons(alarmInput([seven], { answered }))).toEqual([]);
    expect(then("2026-11-02T20:59")).toEqual([]);
    expect(then("2026-11-02T21:00").map(({ key }) => key)).toEqual(["dry:r2026-11-02T15:00"]);
  });

  it("an answer to another reason leaves its hours", () => {
    const answered = [{ key: "new-fluid:bloody:r2026-11-02T08:00", until: at("2026-11-02T12:00Z") }];
    expect(codes([ran("2026-11-02T08:00", "2026-11-02T15:00", 0)], { answered })).toEqual(["dry"]);
  });

  it("silence is not dry, nor is a tube that drains a collection", () => {
    expect(codes([ran("2026-11-02T08:00", "2026-11-02T09:00", 60)])).toEqual([]);
    const collection = { entries: [placed({ kind: "abscess drain" as const, side: "not sided" as const })] };
    expect(codes([ran("2026-11-02T08:00", "2026-11-03T08:00", 0)], collection)).toEqual([]);
  });
});
