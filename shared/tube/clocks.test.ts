import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import {
  balloonChecked,
  capped,
  checked,
  clockDated,
  converted,
  downsized,
  type Entry,
  exchanged,
  fellOut,
  flushed,
  newPuncture,
  partlyDislodged,
  placed,
  removed,
  repositioned,
  salvaged,
  takenOver,
  tipPosition,
  trialStarted,
  uncapped,
  upsized,
} from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { catheterAge, tractAge } from "./clocks.ts";
import { eventKinds, eventRules } from "./event-kinds.ts";
import { fold } from "./fold.ts";

const tube = (...entries: readonly Entry[]) => fold(history(...entries)).tubes.at(-1)!;
const known = (days: number, exact = true) => ({ known: true, days, exact });

describe("two clocks, 30 days after Fri 14 Aug 2026, with something on day 10", () => {
  const on = "2026-08-24";
  const today = day("2026-09-13");

  it.each([
    ["an exchange", [exchanged({ on })], 20, 30],
    ["an upsize", [upsized({ on })], 20, 30],
    ["an exchange elsewhere", [exchanged({ on, elsewhere: "Far Dale General" })], 20, 30],
    ["a salvage through the old tract", [fellOut({ on }), salvaged({ on, order: 1 })], 20, 30],
    ["a new puncture", [fellOut({ on }), newPuncture({ on, order: 1 })], 20, 20],
    ["a conversion", [converted({ on })], 20, 30],
    ["a downsize", [downsized({ on })], 20, 30],
    ["a check", [checked({ on })], 30, 30],
    ["a flush", [flushed({ on })], 30, 30],
    ["a reposition", [partlyDislodged({ on }), repositioned({ on, order: 1 })], 30, 30],
    ["a clamp trial", [trialStarted({ on })], 30, 30],
    ["water in the balloon", [balloonChecked({ on })], 30, 30],
    ["a cap", [capped({ on })], 30, 30],
    ["a cap taken off", [capped({ on }), uncapped({ on, order: 1 })], 30, 30],
    ["the position of the tip", [tipPosition({ on })], 30, 30],
    ["a loss", [fellOut({ on })], 30, 30],
  ])("after %s", (_name, entries, catheter, tract) => {
    const now = tube(placed({ on: "2026-08-14" }), ...entries);
    expect(catheterAge(now, today)).toEqual(known(catheter));
    expect(tractAge(now, today)).toEqual(known(tract));
  });

  it("start where the table of kinds says: no other kind resets one", () => {
    expect(eventKinds.filter((kind) => eventRules[kind].resets === "both").toSorted()).toEqual(
      ["new puncture", "placed", "taken over"].toSorted(),
    );
    expect(eventKinds.filter((kind) => eventRules[kind].resets === "catheter").toSorted()).toEqual(
      ["converted", "downsized", "exchanged", "salvaged", "upsized"].toSorted(),
    );
  });
});

describe("an age", () => {
  it.each([
    ["on the day itself", "2026-08-14", 0],
    ["the day after", "2026-08-15", 1],
    ["before the start, by a clock that went back", "2026-08-13", 0],
  ])("%s", (_name, today, days) => {
    expect(catheterAge(tube(placed({ on: "2026-08-14" })), day(today))).toEqual(known(days));
  });

  it("of a span is the longest for the catheter and the shortest for the tract", () => {
    const march = tube(takenOver({ on: "2026-03", tractSince: "2026-01-01..2026-01-31" }));
    // From 1 March 31 days, from 31 January 60.
    expect(catheterAge(march, day("2026-04-01"))).toEqual(known(31, false));
    expect(tractAge(march, day("2026-04-01"))).toEqual(known(60, false));
  });

  it("of an undated catheter cannot be told", () => {
    expect(catheterAge(tube(takenOver({ on: "?" })), day("2026-08-14"))).toEqual({ known: false });
    expect(tractAge(tube(takenOver({ on: "?" })), day("2026-08-14"))).toEqual({ known: false });
  });

  it("of an undated tract is at least the catheter's, counted from its latest day", () => {
    const march = tube(takenOver({ on: "2026-03", tractSince: "?" }));
    expect(tractAge(march, day("2026-04-01"))).toEqual(known(1, false));
  });

  it("of an undated tract is made no younger by an exchange through it", () => {
    const later = tube(takenOver({ on: "2026-03", tractSince: "?" }), exchanged({ on: "2026-08-14" }));
    expect(tractAge(later, day("2026-08-14"))).toEqual(known(136, false));
    const lost = tube(takenOver({ on: "2026-03", tractSince: "?" }), newPuncture({ on: "2026-08-14" }));
    expect(tractAge(lost, day("2026-08-15"))).toEqual(known(1));
  });

  it("of an ended record stops at its end", () => {
    const gone = tube(placed({ on: "2026-06-01" }), removed({ on: "2026-06-11" }));
    expect(catheterAge(gone, day("2026-08-14"))).toEqual(known(10));
    expect(tractAge(gone, day("2026-08-14"))).toEqual(known(10));
  });

  it("is told from a date found later, for the clock that it speaks of", () => {
    const dated = tube(takenOver({ on: "?" }), clockDated({ since: "2026-08-04" }));
    expect(catheterAge(dated, day("2026-08-14"))).toEqual(known(10));
    const both = tube(takenOver({ on: "?" }), clockDated({ since: "2026-08-04", tractSince: "2026-07-05" }));
    expect(tractAge(both, day("2026-08-14"))).toEqual(known(40));
  });
});
