import { describe, expect, it } from "vitest";
import { millilitres } from "#shared/output/microlitre.ts";
import type { Reading } from "#shared/output/reading.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import type { Character } from "#shared/tube/vocabulary.ts";
import { alarmInput, dated, ran } from "#tests/factories/alarm-input.ts";
import { at } from "#tests/factories/reading.ts";
import { capped, checked, exchanged, placed, repositioned, uncapped } from "#tests/support/factories.ts";
import { alarmReasons } from "./alarm-reasons.ts";

const keys = (...[readings, more]: Parameters<typeof alarmInput>) =>
  alarmReasons(alarmInput(readings, more)).map(({ key }) => key);
const of = (kind: TubeKind, on?: string) => ({
  entries: [placed({ kind, ...(on !== undefined && { on }) })],
});

/** One reading a day from 09:00 to 10:00 of 200 mL: no day is complete. */
const looked = (...days: readonly (readonly Character[])[]) =>
  days.map((characters, n) =>
    ran(`${dated(n)}T09:00`, `${dated(n)}T10:00`, 200, { characters: [...characters] }),
  );

describe("a fluid that this tube is not expected to drain", () => {
  it.each([
    ["nephrostomy", "urine-like", []],
    ["nephrostomy", "clear", []],
    ["nephrostomy", "debris", []],
    ["nephrostomy", "serous", []],
    ["nephrostomy", "bloody", ["new-fluid:bloody:r2026-11-01T09:00"]],
    ["nephrostomy", "clots", ["new-fluid:clots:r2026-11-01T09:00"]],
    ["nephrostomy", "serosanguineous", ["new-fluid:serosanguineous:r2026-11-01T09:00"]],
    ["nephrostomy", "feculent", ["new-fluid:feculent:r2026-11-01T09:00"]],
    ["abscess drain", "purulent", []],
    ["abscess drain", "serosanguineous", []],
    ["abscess drain", "bloody", ["new-fluid:bloody:r2026-11-01T09:00"]],
    ["abscess drain", "bilious", ["new-fluid:bilious:r2026-11-01T09:00"]],
    ["external biliary drain", "purulent", ["new-fluid:purulent:r2026-11-01T09:00"]],
    ["external biliary drain", "bilious", []],
  ] as const)("%s, %s: %j", (kind, character, expected) => {
    expect(keys(looked([character]), of(kind))).toEqual(expected);
  });

  it("where blood is expected, so is a lighter one and a clot", () => {
    const entries = [placed({ facts: { expectedFluid: ["bloody"] } })];
    expect(keys(looked(["serosanguineous"], ["clots"]), { entries })).toEqual([]);
  });

  it("where nobody said what is expected, none is new", () => {
    expect(keys(looked(["bloody"]), { entries: [placed({ facts: { expectedFluid: [] } })] })).toEqual([]);
  });

  it("is new once until it was gone, whatever nobody wrote down between", () => {
    expect(keys(looked(["bloody"], ["bloody"], [], ["bloody"]))).toEqual([
      "new-fluid:bloody:r2026-11-01T09:00",
    ]);
    expect(keys(looked(["bloody"], ["urine-like"], ["bloody"]))).toEqual([
      "new-fluid:bloody:r2026-11-01T09:00",
      "new-fluid:bloody:r2026-11-03T09:00",
    ]);
  });

  it("says which, what is expected, how soon, what holds until then and by which row", () => {
    const entries = [placed({ facts: { expectedFluid: ["urine-like", "clear"] } })];
    expect(alarmReasons(alarmInput(looked(["bloody"]), { entries }))).toEqual([
      {
        key: "new-fluid:bloody:r2026-11-01T09:00",
        code: "new-fluid",
        level: "same day",
        untilReached: "keep the tube",
        on: "2026-11-01",
        at: at("2026-11-01T10:00Z"),
        readings: ["r2026-11-01T09:00"],
        args: { character: "bloody", expected: "urine-like, clear" },
        source: "CP",
      },
    ]);
  });

  it("stands through an exchange until somebody has answered it", () => {
    const entries = [placed(), exchanged({ on: "2026-11-02" })];
    const key = "new-fluid:bloody:r2026-11-01T09:00";
    expect(keys(looked(["bloody"]), { entries })).toEqual([key]);
    const answered = [{ key, until: at("2026-11-01T10:00Z") }];
    expect(keys(looked(["bloody"], ["bloody"]), { entries, answered })).toEqual([]);
  });

  it("is seen in a reading of which nobody knows when it began", () => {
    const first = { ...looked(["bloody"])[0]!, from: "since last emptying" as const };
    expect(keys([first])).toEqual(["new-fluid:bloody:r2026-11-01T09:00"]);
  });

  it.each([
    ["10:01", []],
    ["10:00", ["new-fluid:serosanguineous:r2026-11-03T09:00"]],
    ["09:59", ["new-fluid:serosanguineous:r2026-11-03T09:00"]],
  ])("pink urine 48 h after a procedure at %s is asked again before: %j", (time, expected) => {
    const entries = [placed({ on: "2026-11-01", at: time })];
    expect(keys(looked([], ["serosanguineous"], ["serosanguineous"]), { entries })).toEqual(expected);
  });

  it("pink at the procedure and after a tube was put back in place is asked again; after a check it is none", () => {
    const pink = looked(["serosanguineous"]);
    expect(keys(pink, { entries: [placed({ on: "2026-11-01", at: "10:00" })] })).toEqual([]);
    expect(keys(pink, { entries: [placed(), repositioned({ on: "2026-10-31", at: "10:00" })] })).toEqual([]);
    const key = "new-fluid:serosanguineous:r2026-11-01T09:00";
    expect(keys(pink, { entries: [placed(), checked({ on: "2026-10-31", at: "10:00" })] })).toEqual([key]);
    expect(keys(pink, { entries: [placed(), exchanged({ on: "2026-11-01", at: "10:01" })] })).toEqual([key]);
    expect(keys(looked(["bloody"]), { entries: [placed({ on: "2026-11-01", at: "10:00" })] })).toHaveLength(
      1,
    );
  });

  it("pink soon after a procedure stays so when another one follows", () => {
    const entries = [placed({ on: "2026-11-01", at: "08:00" }), exchanged({ on: "2026-11-05", at: "08:00" })];
    expect(keys(looked(["serosanguineous"]), { entries })).toEqual([]);
  });
});

const session = (n: number, ml: number, symptoms: readonly ("cough" | "pain" | "breathlessness")[] = []) =>
  ran(`${dated(n)}T09:00`, `${dated(n)}T09:30`, ml, { symptoms: [...symptoms] });

describe("sessions (example table: over 1,000 mL pleural, 2,000 peritoneal; cough or pain: stop, MEM)", () => {
  it.each([
    ["tunnelled pleural catheter", 999, []],
    ["tunnelled pleural catheter", 1000, []],
    ["tunnelled pleural catheter", 1000.001, ["session-over-ceiling:r2026-11-01T09:00"]],
    ["tunnelled peritoneal drain", 2000, []],
    ["tunnelled peritoneal drain", 2001, ["session-over-ceiling:r2026-11-01T09:00"]],
  ] as const)("%s, a session of %d mL: %j", (kind, ml, expected) => {
    expect(keys([session(0, ml)], of(kind))).toEqual(expected);
  });

  const pleural = of("tunnelled pleural catheter");

  it("the first one, of which nobody knows when it began, speaks over its ceiling and is what the next is held against", () => {
    const first = (ml: number, more: Partial<Reading> = {}) => ({
      ...session(0, ml),
      from: "since last emptying" as const,
      ...more,
    });
    const key = "session-over-ceiling:r2026-11-01T09:00";
    expect(keys([first(1000)], pleural)).toEqual([]);
    expect(keys([first(1000.001)], pleural)).toEqual([key]);
    expect(keys([first(1000.001, { procedureAspirate: true })], pleural)).toEqual([]);
    expect(keys([first(1200, { flushGiven: { ul: millilitres(200), estimated: false } })], pleural)).toEqual(
      [],
    );
    expect(keys([first(400), session(4, 399, ["breathlessness"])], pleural)).toEqual([
      "session-falling:r2026-11-05T09:00",
    ]);
  });

  it("one stopped for cough or pain", () => {
    expect(keys([session(0, 300, ["cough"])], pleural)).toEqual(["session-symptoms:r2026-11-01T09:00"]);
    expect(keys([session(0, 300, ["pain"])], pleural)).toEqual(["session-symptoms:r2026-11-01T09:00"]);
  });

  it.each([
    [401, ["breathless:r2026-11-05T09:00"]],
    [400, ["breathless:r2026-11-05T09:00"]],
    [399.999, ["session-falling:r2026-11-05T09:00"]],
  ])("breathless with %d mL after 400: %j", (ml, expected) => {
    expect(keys([session(0, 400), session(4, ml, ["breathlessness"])], pleural)).toEqual(expected);
  });

  it("case 18: a missed session is no low one: it falls against the last that was measured", () => {
    const unknown = { ...session(2, 0), gross: unknownFact };
    expect(keys([session(0, 400), unknown, session(4, 300, ["breathlessness"])], pleural)).toEqual([
      "session-falling:r2026-11-05T09:00",
    ]);
    expect(keys([session(0, 400), session(9, 300)], pleural)).toEqual([]);
  });

  it("one of unknown volume has not fallen", () => {
    const unknown = { ...session(4, 0, ["breathlessness"]), gross: unknownFact };
    expect(keys([session(0, 400), unknown], pleural)).toEqual(["breathless:r2026-11-05T09:00"]);
  });

  it("the one before is the last that was emptied before, whenever it began", () => {
    const long = ran("2026-11-01T09:00", "2026-11-01T12:00", 400, { symptoms: [] });
    const short = ran("2026-11-01T10:00", "2026-11-01T11:00", 300, { symptoms: ["breathlessness"] });
    expect(keys([long, short], pleural)).toEqual(["breathless:r2026-11-01T10:00"]);
  });

  it("breathless and stopped for a cough is both", () => {
    expect(keys([session(0, 300, ["cough", "breathlessness"])], pleural)).toEqual([
      "breathless:r2026-11-01T09:00",
      "session-symptoms:r2026-11-01T09:00",
    ]);
  });

  it("say their figures, how soon and by which row", () => {
    const all = [session(0, 1200, ["cough", "pain"]), session(4, 300, ["breathlessness"])];
    const told = (more: object = {}) =>
      alarmReasons(alarmInput(all, { ...pleural, ...more })).map(
        ({ code, level, untilReached, args, source }) => [code, level, untilReached, args, source],
      );
    const over = ["session-over-ceiling", null, null, { ml: 1200, over: 1000 }, "MEM"];
    const stopped = ["session-symptoms", null, null, { symptoms: "cough, pain" }, "MEM"];
    const fell = { ml: 300, before: 1200 };
    expect(told()).toEqual([over, stopped, ["session-falling", "emergency services", null, fell, "MEM"]]);
    const protocol = { ...alarmInput([]).protocol, redFlags: [] };
    expect(told({ protocol })).toEqual([over, stopped, ["session-falling", null, null, fell, "MEM"]]);
    expect(keys([session(0, 300, ["breathlessness"])], { ...pleural, protocol })).toEqual([]);
  });

  it("breathlessness with any tube is a red flag, of emergency services", () => {
    const [reason] = alarmReasons(alarmInput([session(0, 300, ["breathlessness"])]));
    expect(reason).toMatchObject({ code: "breathless", level: "emergency services", source: "CP" });
  });
});

describe("air leak of a chest tube", () => {
  const chest = of("chest tube");
  const bubbles = (n: number, airLeak: "none" | "present" | "not recorded") =>
    ran(`${dated(n)}T09:00`, `${dated(n)}T10:00`, 20, { airLeak });

  it("speaks when one comes that was not there; not of one that was there from the first", () => {
    expect(keys([bubbles(0, "present"), bubbles(1, "present")], chest)).toEqual([]);
    expect(keys([bubbles(0, "present"), bubbles(1, "none")], chest)).toEqual([]);
    expect(keys([bubbles(0, "none"), bubbles(1, "not recorded"), bubbles(2, "present")], chest)).toEqual([
      "air-leak:r2026-11-03T09:00",
    ]);
  });

  it("says nothing where there is none, and nothing without a row", () => {
    expect(keys([bubbles(0, "none"), bubbles(1, "none")], chest)).toEqual([]);
    const { protocol } = alarmInput([]);
    const without = { ...protocol, outputRows: { ...protocol.outputRows!, chestTube: null } };
    expect(keys([bubbles(0, "none"), bubbles(1, "present")], { ...chest, protocol: without })).toEqual([]);
  });

  it("names no level: the row has none", () => {
    const [reason] = alarmReasons(alarmInput([bubbles(0, "none"), bubbles(1, "present")], chest));
    expect(reason).toMatchObject({ level: null, untilReached: null, args: {}, source: "MEM" });
  });

  it("says nothing of a tube that is not measured by air", () => {
    expect(keys([bubbles(0, "none"), bubbles(1, "present")])).toEqual([]);
  });
});

describe("leaks", () => {
  const leaky = (n: number, leak: "none" | "damp" | "soaking" | "not recorded") =>
    ran(`${dated(n)}T09:00`, `${dated(n)}T10:00`, 200, { leak });
  const shut = { entries: [placed(), capped({ on: "2026-10-30", bagAtHome: confirmed(true) })] };

  it("one that soaks is a red flag, a damp dressing is none", () => {
    expect(keys([leaky(0, "damp")])).toEqual([]);
    expect(keys([leaky(0, "soaking"), leaky(1, "not recorded"), leaky(2, "soaking")])).toEqual([
      "soaking-leak:r2026-11-01T09:00",
    ]);
  });

  it("a capped tube with any leak, or with pain, holds what the clinic says", () => {
    const reasons = alarmReasons(alarmInput([leaky(0, "damp")], shut));
    expect(reasons).toMatchObject([
      {
        key: "leak-while-shut:r2026-11-01T09:00",
        level: "same day",
        untilReached: "reconnect to bag",
        args: { leak: "damp" },
      },
    ]);
    const pain = ran("2026-11-01T09:00", "2026-11-01T10:00", 0, { symptoms: ["pain"] });
    expect(keys([pain], shut)).toEqual(["symptoms-while-shut:r2026-11-01T09:00"]);
  });

  it("of a capped tube speaks again once it was gone, whatever nobody wrote down between", () => {
    const when = (readings: readonly Reading[]) => keys(readings, shut).map((key) => key.slice(-16, -6));
    expect(when([leaky(0, "not recorded"), leaky(1, "none")])).toEqual([]);
    expect(when([leaky(0, "damp"), leaky(1, "not recorded"), leaky(2, "damp")])).toEqual(["2026-11-01"]);
    expect(when([leaky(0, "damp"), leaky(1, "none"), leaky(2, "soaking")])).toEqual([
      "2026-11-01",
      "2026-11-03",
    ]);
    const felt = (n: number, symptoms: Reading["symptoms"]) =>
      ran(`${dated(n)}T09:00`, `${dated(n)}T10:00`, 0, { symptoms });
    expect(when([felt(0, ["pain"]), felt(1, "not recorded"), felt(2, ["pain"])])).toEqual(["2026-11-01"]);
    expect(when([felt(0, ["pain"]), felt(1, []), felt(2, ["pain"])])).toEqual(["2026-11-01", "2026-11-03"]);
    const [both] = alarmReasons(alarmInput([felt(0, ["cough", "pain"])], shut));
    expect(both?.args).toEqual({ symptoms: "cough, pain" });
  });

  it.each([
    ["10:01", []],
    ["10:00", []],
    ["09:59", ["leak-while-shut:r2026-11-01T09:00"]],
  ])("a damp dressing looked at at 10:00, capped at %s: %j", (time, expected) => {
    const entries = [placed(), capped({ on: "2026-11-01", at: time })];
    expect(keys([leaky(0, "damp")], { entries })).toEqual(expected);
  });

  it("what leaked before it was capped, or before it was opened again, is not of now", () => {
    const opened = [...shut.entries, uncapped({ on: "2026-11-02" })];
    expect(keys([leaky(0, "damp")], { entries: opened })).toEqual([]);
    expect(keys([leaky(0, "soaking")], { entries: [placed(), capped({ on: "2026-11-02" })] })).toEqual([]);
  });
});
