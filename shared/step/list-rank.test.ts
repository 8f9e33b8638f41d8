import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { type StepKind, stepKinds } from "#shared/tube/step-kinds.ts";
import { listRank, rankOf } from "./list-rank.ts";
import type { OpenStep } from "./step.ts";

const step = (kind: StepKind, tubeId = "tube-1"): OpenStep => ({
  id: `${tubeId}:${kind}`,
  tubeId,
  kind,
  earliest: null,
  target: day("2026-11-06"),
  latest: null,
  dueOn: day("2026-11-06"),
  provisional: false,
  owner: { role: "nurse", staffId: null },
  ownerFrom: null,
  escalatesOn: null,
  physicianOn: null,
  why: [],
  pins: { protocol: 1, calendar: 1 },
});

const { urgent, clock, call, looseEnd, visit } = listRank;

/** Beside an exchange of the same tube. */
const ranks = {
  "tube out": urgent,
  "part out": urgent,
  "fragment retained": urgent,
  exchange: clock,
  "remove or exchange": clock,
  remove: clock,
  review: clock,
  call,
  "confirm removal": looseEnd,
  "confirm what was done elsewhere": looseEnd,
  "assess the date": looseEnd,
  "no row": looseEnd,
  "no day left": looseEnd,
  contradiction: looseEnd,
  alarm: urgent,
  "clamp trial": call,
  "ask again": call,
  "balloon check": call,
  whereabouts: call,
  "tip position": looseEnd,
  handover: looseEnd,
  "find out": looseEnd,
  hospice: looseEnd,
  reconcile: looseEnd,
  "which tube out": looseEnd,
  visit,
  "prepare visit": visit,
  rebook: visit,
  "flush differently": clock,
  "to suction": clock,
  reposition: clock,
  upsize: clock,
  downsize: clock,
  "second drain": clock,
  "tube check": clock,
  imaging: clock,
  "fluid tests": clock,
  "cap or clamp trial": clock,
  refer: clock,
  "hand over": clock,
  "call back": call,
  "alternate contact": call,
  letter: call,
  "ask the referrer": call,
  "not reached": call,
  diary: call,
  "red flag": urgent,
  "tell of the tube": looseEnd,
  "anchors out": call,
} as const satisfies Record<StepKind, number>;

describe("the part of the lists in which a step stands", () => {
  it.each(stepKinds)("%s, beside an exchange of its tube", (kind) => {
    const asked = step(kind);
    expect(rankOf(asked, [step("exchange"), asked])).toBe(ranks[kind]);
  });

  it("a tube without any date comes next by the step that asks for one, once", () => {
    const all = [step("assess the date"), step("no row"), step("call")];
    expect(all.map((each) => rankOf(each, all))).toEqual([clock, looseEnd, call]);
  });

  it("the dates of another tube do not stand in for its own", () => {
    const all = [step("exchange", "tube-2"), step("assess the date")];
    expect(all.map((each) => rankOf(each, all))).toEqual([clock, clock]);
  });
});
