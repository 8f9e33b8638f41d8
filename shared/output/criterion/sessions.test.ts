import { describe, expect, it } from "vitest";
import { millilitres } from "#shared/output/microlitre.ts";
import type { Reading } from "#shared/output/reading.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { criterionWhen, drain, whole } from "#tests/factories/criterion.ts";
import { at } from "#tests/factories/reading.ts";
import * as make from "#tests/support/factories.ts";

type Asked = Parameters<typeof criterionWhen>[0];

/** A tunnelled pleural catheter of 1 Nov 2026, its sessions at 17:00; it is noon of the 16th. */
const entries = [drain({ kind: "tunnelled pleural catheter", side: "right" })];
const session = (of: string, ml: number, said: Partial<Reading> = {}) =>
  whole(of, ml, { from: "since last emptying", to: at(`${of}T17:00Z`), symptoms: [], ...said });
const three = [session("2026-11-10", 40), session("2026-11-12", 45), session("2026-11-15", 49)];
const asked = (more: Asked = {}) => criterionWhen({ entries, readings: three, ...more });
const codes = (more: Asked) => asked(more).because.map(({ code }) => code);
const withLast = (ml: number, said: Partial<Reading> = {}) => ({
  readings: [...three.slice(0, 2), session("2026-11-15", ml, said)],
});
const noted = (on: string, time: string | null, was = true) =>
  make.clinicalStateNoted({
    on,
    ...(time !== null && { at: time }),
    findings: { coughOrBreathlessness: confirmed(was) },
  });

describe("sessions of a tunnelled pleural catheter (example table: under 50 mL on 3 running, from memory)", () => {
  it("are met with each of them, the newest first, and what they rest on", () => {
    const [third, second, first] = three.toReversed().map(({ to }) => to);
    expect(asked()).toMatchObject({
      because: [
        { code: "session-low", at: third, ml: 49, underMl: 50 },
        { code: "session-low", at: second, ml: 45, underMl: 50 },
        { code: "session-low", at: first, ml: 40, underMl: 50 },
      ],
      evidence: {
        days: [],
        sessions: [
          { at: third, state: "low", ml: 49 },
          { at: second, state: "low", ml: 45 },
          { at: first, state: "low", ml: 40 },
        ],
        readings: ["tube-1 2026-11-15", "tube-1 2026-11-12", "tube-1 2026-11-10"],
        events: [],
      },
    });
  });

  it.each([
    [49.999, "numeric part met"],
    [50, "not met"],
    [51, "not met"],
  ])("%s mL in the last of them: %s", (ml, kind) => {
    expect(asked(withLast(ml)).kind).toBe(kind);
  });

  it("an estimate, a leak and an unknown volume are not known to be low; much is much in any case", () => {
    const about = (ml: number) => ({
      gross: { certainty: "estimated" as const, value: millilitres(ml) },
    });
    expect(codes(withLast(30, about(30)))).toEqual(["session-unknown"]);
    expect(codes(withLast(60, about(60)))).toEqual(["session-not-low"]);
    expect(codes(withLast(30, { leak: "soaking" }))).toEqual(["session-unknown"]);
    const unknown = asked(withLast(30, { gross: unknownFact }));
    expect(unknown.evidence.sessions[0]).toMatchObject({ state: "cannot tell", ml: null });
  });

  it("only the last three count, of this tube, and none that is still to come", () => {
    const earlier = session("2026-11-08", 900);
    const coming = session("2026-11-16", 900);
    const other = session("2026-11-15", 900, { tubeId: "tube-2" });
    expect(asked({ readings: [...three, earlier, coming, other] }).kind).toBe("numeric part met");
    // At this very time it is over.
    expect(asked({ readings: [...three, coming], now: at("2026-11-16T17:00Z") }).kind).toBe("not met");
  });

  it("two emptied at one time stand by their ids, in whatever order they came", () => {
    const twice = [session("2026-11-15", 20, { id: "a" }), session("2026-11-15", 30, { id: "b" })];
    const expected = ["a", "b", "tube-1 2026-11-12"];
    expect(asked({ readings: [...three.slice(0, 2), ...twice] }).evidence.readings).toEqual(expected);
    expect(asked({ readings: [...twice.toReversed(), ...three.slice(0, 2)] }).evidence.readings).toEqual(
      expected,
    );
  });

  it("before a change they say nothing of the tube as it is now, much or little", () => {
    const changed = [...entries, make.repositioned({ on: "2026-11-13" })];
    const readings = [session("2026-11-10", 80), session("2026-11-12", 90), session("2026-11-15", 40)];
    expect(asked({ entries: changed, readings }).because).toMatchObject([
      { code: "too-few-sessions", since: { what: "repositioned" }, count: 1, needed: 3 },
    ]);
  });

  it("too few names the change that a session is not known to have come after", () => {
    // 17:00 is after 10:00; without a clock time the upsizing may have come at any hour of that day.
    const two = [
      make.upsized({ on: "2026-11-12", size: make.F(12) }),
      make.repositioned({ on: "2026-11-12", at: "10:00" }),
    ];
    expect(asked({ entries: [...entries, ...two] }).because).toMatchObject([
      { code: "too-few-sessions", since: { what: "upsized" }, count: 1 },
    ]);
  });

  it("too few of a tube that was taken over are since no change that anybody knows", () => {
    const takenOver = [make.takenOver({ kind: "tunnelled pleural catheter", on: "2026-11-01" })];
    expect(asked({ entries: takenOver, readings: three.slice(1) }).because).toMatchObject([
      { code: "too-few-sessions", since: null, count: 2 },
    ]);
  });

  it("after too long a silence nothing is proven, and it is told beside it", () => {
    const later = { now: at("2026-11-19T12:00Z") };
    expect(asked({ ...withLast(60), ...later })).toMatchObject({
      kind: "cannot tell",
      because: [{ code: "last-session-too-old", hours: 72 }, { code: "session-not-low" }],
    });
    expect(codes({ ...withLast(60) })).toEqual(["session-not-low"]);
  });

  it("without a row for their age: cannot tell", () => {
    const outputRows = { ...exampleProtocol.outputRows!, lastCompleteDayHours: null };
    expect(asked({ protocol: { ...exampleProtocol, outputRows } })).toMatchObject({
      kind: "cannot tell",
      because: [{ code: "no-row", of: "age of the last complete day" }],
    });
  });

  it.each([
    ["a minute before the last session", noted("2026-11-15", "16:59"), "numeric part met"],
    ["at it", noted("2026-11-15", "17:00"), "not met"],
    ["after it", noted("2026-11-15", "17:01"), "not met"],
    ["that day, at no known hour", noted("2026-11-15", null), "not met"],
    ["the day before, at no known hour", noted("2026-11-14", null), "numeric part met"],
    ["nobody knows when", noted("?", null), "not met"],
    ["not to be there", noted("2026-11-16", "08:00", false), "numeric part met"],
  ])("a cough or breathlessness noted %s: %s", (_name, entry, kind) => {
    expect(asked({ entries: [...entries, entry] }).kind).toBe(kind);
  });

  it.each([
    ["no row of sessions", []],
    ["a row without a volume", [{ lowMl: null }]],
    ["a row without a number of sessions", [{ lowSessions: null }]],
  ])("%s: cannot tell", (_name, parts) => {
    const { outputRows, ...rest } = exampleProtocol;
    const sessions = parts.map((part) => ({ ...outputRows!.sessions[0]!, ...part }));
    expect(asked({ protocol: { ...rest, outputRows: { ...outputRows!, sessions } } }).because).toEqual([
      { code: "no-row", of: "for this kind" },
    ]);
  });
});
