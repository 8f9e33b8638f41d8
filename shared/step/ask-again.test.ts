import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import type { Reading } from "#shared/output/reading.ts";
import type { Books } from "#shared/step/open-steps.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";
import type { Character } from "#shared/tube/vocabulary.ts";
import { ran } from "#tests/factories/alarm-input.ts";
import * as make from "#tests/support/factories.ts";
import { dates, kindsAfter, stepAfter, whyCodes } from "#tests/support/steps.ts";
import { books } from "#tests/support/told.ts";

/** A nephrostomy of Mon 2 Nov 2026, 10:00; an emptying is looked at when it ends. */
const placed = make.placed({ on: "2026-11-02", at: "10:00" });
const seen = (at: string, ...characters: readonly Character[]): Reading =>
  ran(`${at.slice(0, 10)}T00:01`, at, 200, { id: at, characters: [...characters] });
const logged = (...readings: readonly Reading[]): Books =>
  books({ readings: () => readings, bornOn: day("1950-01-01") });

const pink = seen("2026-11-03T20:00", "serosanguineous");
const kindsWith = (readings: readonly Reading[], entries: readonly make.Entry[] = [placed]) =>
  kindsAfter(entries, logged(...readings)).filter((kind) => kind === "ask again" || kind === "alarm");

describe("pink urine under 48 h after a procedure: ask again next day (example table, CP)", () => {
  it("is no alarm and a call of the next day, the caller's, with its row", () => {
    const step = stepAfter([placed], "ask again", logged(pink));
    expect(dates(step)).toEqual([null, "2026-11-04", null]);
    expect(step.owner).toEqual({ role: "caller", staffId: null });
    expect(step.escalatesOn).toBe("2026-11-07");
    expect(step.why[0]).toMatchObject({
      code: "pink-urine",
      args: { day: "2026-11-03", hours: 48, source: "CP" },
    });
    expect(whyCodes(step)).toEqual(["pink-urine", "row-example"]);
    expect(kindsWith([pink])).toEqual(["ask again"]);
  });

  it.each([
    ["2026-11-04T09:59", ["ask again"]],
    ["2026-11-04T10:00", ["alarm"]],
    ["2026-11-04T10:01", ["alarm"]],
  ])("seen at %s, 48 h after 10:00 of the 2nd: %j", (at, expected) => {
    expect(kindsWith([seen(at, "serosanguineous")])).toEqual(expected);
  });

  it("counts from what is done through the tract: a reposition is, a check or a call is not", () => {
    const older = make.placed({ on: "2026-10-01", at: "10:00" });
    const done = (entry: make.Entry) => kindsWith([pink], [older, entry]);
    expect(done(make.repositioned({ on: "2026-11-03", at: "12:00" }))).toEqual(["ask again"]);
    expect(done(make.exchanged({ on: "2026-11-03", at: "20:00" }))).toEqual(["ask again"]);
    expect(done(make.exchanged({ on: "2026-11-03", at: "20:01" }))).toEqual(["alarm"]);
    expect(done(make.checked({ on: "2026-11-03", at: "12:00" }))).toEqual(["alarm"]);
    expect(done(make.called({ on: "2026-11-03", at: "12:00" }))).toEqual(["alarm"]);
  });

  it("is closed by a later reading with a said look; one that says nothing closes nothing", () => {
    expect(kindsWith([pink, seen("2026-11-04T08:00", "urine-like")])).toEqual([]);
    expect(kindsWith([pink, seen("2026-11-04T08:00")])).toEqual(["ask again"]);
    expect(kindsWith([seen("2026-11-03T08:00", "clear"), pink])).toEqual(["ask again"]);
  });

  it("still pink within the hours is asked again the day after that; at the hours it is the alarm of a new fluid", () => {
    const again = seen("2026-11-04T08:00", "serosanguineous");
    expect(stepAfter([placed], "ask again", logged(pink, again)).dueOn).toBe("2026-11-05");
    expect(kindsWith([pink, seen("2026-11-04T20:00", "serosanguineous")])).toEqual(["alarm"]);
  });

  it("is closed by a call that reached somebody since", () => {
    const called = (on: string, at?: string, outcome?: "not reached") =>
      make.called({ on, ...(at !== undefined && { at }), ...(outcome !== undefined && { outcome }) });
    const since = (...calls: readonly make.Entry[]) => kindsWith([pink], [placed, ...calls]);
    expect(since(called("2026-11-04", "09:00"))).toEqual([]);
    expect(since(called("2026-11-04", "09:00", "not reached"))).toEqual(["ask again"]);
    expect(since(called("2026-11-04", "09:00"), called("2026-11-05", "09:00", "not reached"))).toEqual([]);
    expect(since(called("2026-11-03", "20:00"))).toEqual(["ask again"]);
    expect(since(called("2026-11-03", "20:01"))).toEqual([]);
    // Without a clock time a call of the same day may have been made before anything was seen.
    expect(since(called("2026-11-03"))).toEqual(["ask again"]);
    expect(since(called("2026-11-04"))).toEqual([]);
  });

  it.each<[TubeKind, readonly Character[], readonly Character[], readonly string[]]>([
    ["nephrostomy", ["serosanguineous"], ["urine-like", "serosanguineous"], []],
    ["nephrostomy", ["serosanguineous"], [], []],
    ["nephrostomy", ["bloody"], ["urine-like"], ["alarm"]],
    ["external biliary drain", ["serosanguineous"], ["bilious"], ["alarm"]],
  ])("%s, %j where %j is expected: %j", (kind, characters, expectedFluid, expected) => {
    const entries = [
      make.placed({
        kind,
        on: "2026-11-02",
        at: "10:00",
        facts: { expectedFluid: [...expectedFluid] },
      }),
    ];
    expect(kindsWith([seen("2026-11-03T20:00", ...characters)], entries)).toEqual(expected);
  });

  it("has no row under 18, and none in a table stored before", () => {
    const child = books({ readings: () => [pink], bornOn: day("2012-01-01") });
    expect(kindsAfter([placed], child)).not.toContain("ask again");
    const older = books({
      readings: () => [pink],
      protocol: () => ({ ...books().protocol(1), outputRows: null }),
    });
    expect(kindsAfter([placed], older)).not.toContain("ask again");
    const { outputRows, ...rest } = books().protocol(1);
    const noRow = { ...rest, outputRows: { ...outputRows!, newFluid: null } };
    const without = books({ readings: () => [pink], protocol: () => noRow });
    expect(kindsAfter([placed], without)).not.toContain("ask again");
  });

  it("is not put off by a closed day: it asks on the next one, when it is said to be past it", () => {
    // Fri 6 Nov 2026 placed; seen on Sat 7: asked on Sun 8, on which the clinic is closed.
    const friday = make.placed({ on: "2026-11-06", at: "10:00" });
    const step = stepAfter([friday], "ask again", logged(seen("2026-11-07T12:00", "serosanguineous")));
    expect(step.dueOn).toBe("2026-11-08");
  });

  it("in hospice gives way with the calls that a clinician stopped", () => {
    const stopped = make.hospiceDecided({ on: "2026-11-03", calls: "stop", until: "2026-12-01" });
    expect(kindsWith([pink], [placed, stopped])).toEqual([]);
  });
});
