import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import type { Reading } from "#shared/output/reading.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { Books } from "#shared/step/open-steps.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { dated, ran, wholeDays } from "#tests/factories/alarm-input.ts";
import { at } from "#tests/factories/reading.ts";
import * as make from "#tests/support/factories.ts";
import { kindsAfter, stepAfter, stepsAfter, whyCodes } from "#tests/support/steps.ts";
import { books } from "#tests/support/told.ts";
import { answerableIn } from "./answerable.ts";

const logged = (readings: readonly Reading[], of: Partial<Books> = {}): Books =>
  books({ ...of, readings: () => readings });

const seven = ran("2026-11-02T08:00", "2026-11-02T15:00", 0);
const dryKey = { key: "dry:r2026-11-02T08:00", until: at("2026-11-02T15:00Z") };
const placed = make.placed({ on: "2026-10-01" });

describe("the one alarm of a tube", () => {
  it("a nephrostomy dry for seven hours raises one, on that day, and never a review", () => {
    const alarm = stepAfter([placed], "alarm", logged([seven]));
    expect(alarm).toMatchObject({
      target: "2026-11-02",
      escalatesOn: "2026-11-02",
      physicianOn: "2026-11-03",
    });
    expect(alarm.owner.role).toBe("nurse");
    expect(whyCodes(alarm)).toEqual(["alarm-dry", "row-example"]);
    expect(alarm.why[0]?.args).toEqual({
      minutes: 420,
      hours: 6,
      onlyWayOut: null,
      otherWays: "not known",
      level: "same day",
      untilReached: "do not force the flush",
      source: "CP",
      ...dryKey,
    });
    expect(kindsAfter([placed], logged([seven]))).not.toContain("review");
    expect(stepsAfter([placed], logged([seven]))[0]?.kind).toBe("alarm");
  });

  it("holds what was recorded and what rows say of readings; due on the first of them", () => {
    const entries = [placed, make.blocked({ on: "2026-11-05" })];
    const alarm = stepAfter(entries, "alarm", logged([seven]));
    expect(whyCodes(alarm)).toEqual(["trouble", "alarm-dry", "row-example"]);
    expect(alarm.target).toBe("2026-11-02");
  });

  it("says nothing of an approved table but what it found", () => {
    const approved = { ...exampleProtocol, approved: { by: "Dr. Orla Invented", on: day("2026-10-01") } };
    const of = logged([seven], { protocol: () => approved });
    expect(whyCodes(stepAfter([placed], "alarm", of))).toEqual(["alarm-dry"]);
  });

  it("has no row for somebody under 18, and says so where the dates would stand", () => {
    const of = logged([seven], { bornOn: day("2012-01-01") });
    expect(kindsAfter([placed], of)).not.toContain("alarm");
    expect(kindsAfter([placed], of)).toContain("no row");
  });

  it("stands while a removal is told and not confirmed; ends with the record", () => {
    expect(kindsAfter([placed, make.removed({ on: "2026-11-03" })], logged([seven]))).toEqual(["call"]);
  });
});

describe("a capped tube", () => {
  const capped = [placed, make.capped({ on: "2026-11-02", at: "12:00" })];
  const hot = make.clinicalStateNoted({
    on: "2026-11-03",
    at: "09:00",
    id: "hot",
    findings: { temperature: confirmed({ value: 38.4, asTyped: null }) },
  });

  it("with a fever raises its one alarm, with the entry that says so, without any reading", () => {
    const alarm = stepAfter([...capped, hot], "alarm");
    expect(alarm.target).toBe("2026-11-03");
    expect(alarm.why[0]).toMatchObject({ code: "alarm-found-while-shut", eventId: "hot" });
    expect(answerableIn(alarm.why)).toMatchObject([
      { key: "found-while-shut:fever:hot", until: at("2026-11-03T09:00Z") },
    ]);
    expect(kindsAfter([...capped, hot], books({ bornOn: day("2012-01-01") }))).not.toContain("alarm");
  });

  it("that leaks is a red flag of its own, also where the leak does not soak", () => {
    const damp = make.leaking({ on: "2026-11-03", soaking: confirmed(false) });
    const flagged = { level: "same day", untilReached: "reconnect to bag" };
    expect(stepAfter([...capped, damp], "alarm").why[0]?.args).toMatchObject(flagged);
    expect(stepAfter([placed, damp], "alarm").why[0]?.args).toMatchObject({ level: null });
    const soaking = make.leaking({ on: "2026-11-03", soaking: confirmed(true) });
    expect(stepAfter([...capped, soaking], "alarm").why[0]?.args).toMatchObject({
      level: "same day",
      untilReached: "cover the site",
    });
  });
});

describe("closing it by hand", () => {
  const closed = (...keys: readonly string[]) =>
    make.alarmClosed({ on: "2026-11-05", answers: keys.map((key) => ({ key, until: null })) });

  it("answers the reasons that it names and leaves the others", () => {
    const entries = [placed, make.blocked({ on: "2026-11-05", id: "blocked" })];
    const of = logged([seven]);
    expect(whyCodes(stepAfter([...entries, closed("trouble:blocked")], "alarm", of))).toEqual([
      "alarm-dry",
      "row-example",
    ]);
    expect(whyCodes(stepAfter([...entries, closed(dryKey.key)], "alarm", of))).toEqual(["trouble"]);
    const both = make.alarmClosed({
      on: "2026-11-05",
      answers: [{ key: "trouble:blocked", until: null }, dryKey],
    });
    expect(kindsAfter([...entries, both], of)).not.toContain("alarm");
  });

  it("does not answer what comes after: another six hours without a drop", () => {
    const entries = [placed, make.alarmClosed({ on: "2026-11-02", answers: [dryKey] })];
    const later = ran("2026-11-02T15:00", "2026-11-02T21:00", 0);
    expect(kindsAfter(entries, logged([seven]))).not.toContain("alarm");
    expect(stepAfter(entries, "alarm", logged([seven, later])).why[0]?.args).toMatchObject({
      key: "dry:r2026-11-02T15:00",
    });
  });

  it("a check goes on to close what was recorded, and not what readings say", () => {
    const entries = [placed, make.leaking({ on: "2026-11-01" }), make.checked({ on: "2026-11-03" })];
    expect(whyCodes(stepAfter(entries, "alarm", logged([seven])))).toEqual(["alarm-dry", "row-example"]);
  });

  it("names a reason the same each time: what it answers is what stood in the step", () => {
    const alarm = stepAfter([placed, make.blocked({ on: "2026-11-05", id: "b" })], "alarm", logged([seven]));
    expect(answerableIn(alarm.why).map(({ key, until }) => ({ key, until }))).toEqual([
      { key: "trouble:b", until: null },
      dryKey,
    ]);
  });

  it("losses of balloon water are answered by the check that found them, and speak again with the next", () => {
    const balloon = [
      make.placed({ kind: "balloon gastrostomy", side: "not sided", on: "2026-10-01" }),
      make.balloonChecked({ on: "2026-10-20", found: confirmed(10), refilled: confirmed(10) }),
      make.balloonChecked({ on: "2026-10-27", found: confirmed(9), refilled: confirmed(10) }),
      make.balloonChecked({ on: "2026-11-03", found: confirmed(9), refilled: confirmed(10), id: "second" }),
    ];
    const answered = [...balloon, closed("balloon-losses:second")];
    expect(kindsAfter(balloon)).toContain("alarm");
    expect(kindsAfter(answered)).not.toContain("alarm");
    const again = make.balloonChecked({ on: "2026-11-10", found: confirmed(9), refilled: confirmed(10) });
    expect(kindsAfter([...answered, again])).toContain("alarm");
  });
});

describe("a usual level", () => {
  const biliary = make.placed({ kind: "external biliary drain", on: "2026-10-01" });
  const sixty = logged(wholeDays([60, 60, 60, 60]));

  it("case 38: no alarm until its day, which the alarm after it tells", () => {
    const accepted = make.usualAccepted({ on: "2026-10-20", until: dated(2) });
    const alarm = stepAfter([biliary, accepted], "alarm", sixty);
    expect(alarm.target).toBe("2026-11-04");
    expect(whyCodes(alarm)).toEqual(["alarm-low", "usual-level", "row-example"]);
    expect(kindsAfter([biliary, make.usualAccepted({ on: "2026-10-20" })], sixty)).not.toContain("alarm");
  });

  it("the newest of a row stands; a new puncture has none", () => {
    const long = make.usualAccepted({ on: "2026-10-20" });
    const short = make.usualAccepted({ on: "2026-10-21", until: "2026-10-22" });
    expect(kindsAfter([biliary, long, short], sixty)).toContain("alarm");
    expect(kindsAfter([biliary, long, make.newPuncture({ on: "2026-10-25" })], sixty)).toContain("alarm");
    expect(kindsAfter([biliary, long, make.exchanged({ on: "2026-10-25" })], sixty)).not.toContain("alarm");
  });
});
