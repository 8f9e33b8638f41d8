import { describe, expect, it } from "vitest";
import type { ClinicalState } from "#shared/clinical/clinical-state.ts";
import { day } from "#shared/day/day.ts";
import { onDay, whenUnknown } from "#shared/day/when.ts";
import type { Reading } from "#shared/output/reading.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { fold } from "#shared/tube/fold.ts";
import { alarmInput, ran } from "#tests/factories/alarm-input.ts";
import { figure } from "#tests/factories/criterion.ts";
import * as make from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { alarmReasons } from "./alarm-reasons.ts";

type Asked = Parameters<typeof alarmInput>[1];

/** A left nephrostomy of which nothing came on Mon 2 Nov 2026 from 08:00 to 15:00. */
const dry = ran("2026-11-02T08:00", "2026-11-02T15:00", 0);

/** Level, why it is the only way out, and whether other ways are unknown, of the one dry reason. */
function wayOf(asked: Asked, readings: readonly Reading[] = [dry]) {
  const reasons = alarmReasons(alarmInput(readings, asked)).filter(({ code }) => code === "dry");
  expect(reasons).toHaveLength(1);
  const [{ level, args }] = reasons as [(typeof reasons)[0]];
  return [level, args.onlyWayOut, args.otherWays];
}

const slow = ["same day", null, null];
const unknown = ["same day", null, "not known"];
const faster = (because: string) => ["on call now", because, null];

const voidedOf = (ml: number | "?", on: string | null, time: string | null): ClinicalState => ({
  voidedVolume: {
    fact: ml === "?" ? unknownFact : figure(ml),
    when: on === null ? whenUnknown : onDay(day(on)),
    time,
    eventId: "state",
    recordedOn: day("2026-11-02"),
  },
});

describe("no urine by any route: on call now (example table, CP)", () => {
  it.each([
    ["at the hour it ran dry", voidedOf(0, "2026-11-02", "08:00"), faster("nothing voided")],
    ["a minute before", voidedOf(0, "2026-11-02", "07:59"), unknown],
    ["after", voidedOf(0, "2026-11-02", "14:00"), faster("nothing voided")],
    ["that day, at no known hour", voidedOf(0, "2026-11-02", null), faster("nothing voided")],
    ["the day before, at no known hour", voidedOf(0, "2026-11-01", null), unknown],
    ["on a day nobody knows", voidedOf(0, null, null), unknown],
    ["said to be unknown", voidedOf("?", "2026-11-02", "14:00"), unknown],
    ["nothing said", {}, unknown],
  ])("nothing voided, found %s", (_name, clinical, expected) => {
    expect(wayOf({ clinical })).toEqual(expected);
  });

  it.each([
    ["at the hour it ran dry", voidedOf(1, "2026-11-02", "08:00"), slow],
    ["a minute before", voidedOf(1, "2026-11-02", "07:59"), unknown],
    ["that day, at no known hour: it may have been before", voidedOf(1, "2026-11-02", null), unknown],
  ])("something voided, found %s", (_name, clinical, expected) => {
    expect(wayOf({ clinical })).toEqual(expected);
  });

  it("what was voided after the tube ran again says nothing of when it was dry", () => {
    const again = ran("2026-11-02T15:00", "2026-11-02T18:00", 200);
    const found = (time: string) =>
      wayOf({ clinical: voidedOf(0, "2026-11-02", time) }, [dry, { ...again, flushGiven: "none" }]);
    expect(found("18:00")).toEqual(faster("nothing voided"));
    expect(found("18:01")).toEqual(unknown);
  });

  it("what ran before the tube was dry ends no stretch of it", () => {
    const before = { ...ran("2026-11-02T02:00", "2026-11-02T08:00", 300), flushGiven: "none" as const };
    expect(wayOf({ clinical: voidedOf(0, "2026-11-02", "14:00") }, [before, dry])).toEqual(
      faster("nothing voided"),
    );
  });

  it("what the tube brought before it ran dry ends nothing", () => {
    const before = { ...ran("2026-11-02T02:00", "2026-11-02T08:00", 300), flushGiven: "none" as const };
    expect(wayOf({ clinical: voidedOf(0, "2026-11-02", "14:00") }, [before, dry])).toEqual(
      faster("nothing voided"),
    );
  });

  it("one kidney and a transplant say why", () => {
    expect(wayOf({ conditions: { singleKidney: confirmed(true) } })).toEqual(faster("single kidney"));
    const transplant = { conditions: { transplantKidney: confirmed(true) } };
    expect(wayOf(transplant)).toEqual(faster("transplant kidney"));
    expect(wayOf({ ...transplant, clinical: voidedOf(900, "2026-11-02", "12:00") })).toEqual(
      faster("transplant kidney"),
    );
  });

  it("bile has one level", () => {
    const entries = [make.placed({ kind: "external biliary drain" })];
    const asked = { entries, clinical: voidedOf(0, "2026-11-02", "20:00") };
    expect(wayOf(asked, [ran("2026-11-02T08:00", "2026-11-02T21:00", 0)])).toEqual(slow);
  });
});

describe("two nephrostomies", () => {
  const right = make.placed({ tube: "tube-2", number: 2, side: "right" });
  const second = (readings: readonly Reading[], ...entries: readonly make.Entry[]): Asked => ({
    others: () => {
      const tubes = fold(history(make.placed(), right, ...entries)).tubes;
      return tubes.slice(1).map((tube) => ({
        tube,
        readings: readings.map((reading) => ({ ...reading, tubeId: tube.id, flushGiven: "none" as const })),
      }));
    },
  });
  const bothDry = second([dry]);

  it("both dry, what is voided unknown: unknown is never read as urine", () => {
    expect(wayOf(bothDry)).toEqual(faster("other tubes dry"));
    expect(wayOf({ ...bothDry, clinical: voidedOf("?", "2026-11-02", "12:00") })).toEqual(
      faster("other tubes dry"),
    );
    expect(wayOf({ ...bothDry, clinical: voidedOf(0, "2026-11-02", "12:00") })).toEqual(
      faster("nothing voided, other tubes dry"),
    );
    expect(wayOf({ ...bothDry, clinical: voidedOf(300, "2026-11-02", "12:00") })).toEqual(slow);
  });

  it.each([
    ["dry for the row's hours", [ran("2026-11-02T09:00", "2026-11-02T15:00", 0)], faster("other tubes dry")],
    ["dry for a minute less", [ran("2026-11-02T09:01", "2026-11-02T15:00", 0)], unknown],
    ["running since", [ran("2026-11-02T08:00", "2026-11-02T15:00", 1)], slow],
    [
      "running in a reading that began before: it may have run before",
      [ran("2026-11-02T07:59", "2026-11-02T15:00", 300)],
      unknown,
    ],
    [
      "dry, then running again meanwhile",
      [ran("2026-11-02T02:00", "2026-11-02T09:00", 0), ran("2026-11-02T09:00", "2026-11-02T12:00", 50)],
      slow,
    ],
    ["dry before, and nobody has looked since", [ran("2026-11-01T08:00", "2026-11-02T08:00", 0)], unknown],
    ["of which nothing is logged", [], unknown],
    [
      "dry after all that is logged of this one",
      [ran("2026-11-02T15:00", "2026-11-02T21:00", 0)],
      faster("other tubes dry"),
    ],
    [
      "dry together with it, and running since",
      [ran("2026-11-02T08:00", "2026-11-02T15:00", 0), ran("2026-11-02T15:00", "2026-11-02T16:00", 40)],
      slow,
    ],
    [
      "running after all that is logged of this one",
      [ran("2026-11-02T15:00", "2026-11-02T18:00", 100)],
      slow,
    ],
  ] as const)("the other %s", (_name, readings, expected) => {
    expect(wayOf(second(readings))).toEqual(expected);
  });

  it("one dry and one of which nothing is known are not all dry", () => {
    const third = make.placed({ tube: "tube-3", number: 3, side: "right" });
    const { others } = second([dry], third)!;
    const silent = () => others!().map((one, n) => (n === 0 ? one : { ...one, readings: [] }));
    expect(wayOf({ others: silent })).toEqual(unknown);
  });

  it("what the other did after this one ran again says nothing of when it was dry", () => {
    const again = ran("2026-11-02T15:00", "2026-11-02T18:00", 200);
    const readings = [dry, { ...again, flushGiven: "none" as const }];
    expect(wayOf(second([ran("2026-11-02T18:01", "2026-11-03T02:00", 0)]), readings)).toEqual(unknown);
    expect(wayOf(second([ran("2026-11-02T18:01", "2026-11-02T20:00", 90)]), readings)).toEqual(unknown);
  });

  it("with nothing voided, one of which nothing is known is not read as running", () => {
    expect(wayOf({ ...second([]), clinical: voidedOf(0, "2026-11-02", "12:00") })).toEqual(
      faster("nothing voided"),
    );
  });

  it("one that is capped, out or drains something else is no way of urine", () => {
    expect(wayOf(second([dry], make.capped({ on: "2026-10-30", tube: "tube-2" })))).toEqual(unknown);
    expect(wayOf(second([dry], make.fellOut({ on: "2026-10-30", tube: "tube-2" })))).toEqual(unknown);
    const drain = make.placed({ tube: "tube-3", number: 3, kind: "abscess drain", side: "not sided" });
    expect(wayOf(second([dry], drain))).toEqual(faster("other tubes dry"));
  });
});
