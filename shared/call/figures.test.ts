import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { zone } from "#shared/day/instant.ts";
import { fold } from "#shared/tube/fold.ts";
import {
  flagDone,
  flagHanded,
  flagRaised,
  letterSent,
  notReachedDecided,
  rang,
} from "#tests/support/call-factories.ts";
import {
  converted,
  died,
  type Entry,
  fellOut,
  notReplaced,
  placed,
  removed,
} from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { daysBehind, figureNames, figuresOf } from "./figures.ts";

const span = { from: day("2026-08-01"), to: day("2026-08-31") };
const of = (...patients: readonly (readonly Entry[])[]) =>
  figuresOf(
    patients.map((entries) => fold(history(...entries))),
    span,
    zone("UTC"),
  );

const reached = (on: string) => rang({ on, outcome: "reached the patient" });

describe("at which attempt somebody was reached", () => {
  it("the first, second and third, another way, or not at all", () => {
    const figures = of(
      [placed(), reached("2026-08-17")],
      [placed(), rang(), reached("2026-08-18")],
      [placed(), rang(), rang({ on: "2026-08-18" }), reached("2026-08-19")],
      [placed(), rang(), rang({ on: "2026-08-18", to: "the alternate contact", outcome: "reached a carer" })],
      [placed(), rang(), letterSent({ on: "2026-08-18" }), notReachedDecided({ on: "2026-08-20" })],
      [placed(), rang()],
    );
    expect(figures.reached).toEqual({
      "first attempt": 1,
      "second attempt": 1,
      "third attempt": 1,
      later: 0,
      "another way": 1,
      "not reached": 1,
    });
    expect([figures.trying, figures.patients]).toEqual([1, 6]);
  });

  it("counts what was over in the span, and nothing of before or after", () => {
    expect(
      of([placed({ on: "2026-07-01" }), reached("2026-07-31"), reached("2026-09-01")]).reached[
        "first attempt"
      ],
    ).toBe(0);
    expect(of([placed(), reached("2026-08-31")]).reached["first attempt"]).toBe(1);
  });
});

describe("red flags", () => {
  it("wait from told to handed to done, in hours; without a clock time nobody can tell", () => {
    // 10:00 to 10:30 is half an hour, to 12:00 two hours; 10:00 to 16:00 six.
    const quick = [placed(), flagRaised(), flagHanded({ at: "10:30" }), flagDone({ at: "12:00" })];
    const slow = [placed(), flagRaised(), flagHanded({ at: "11:30" }), flagDone({ at: "16:00" })];
    const untimed = [placed(), flagRaised({ at: undefined }), flagDone()];
    expect(of(quick, slow, untimed).flags).toEqual({
      raised: 3,
      unhanded: 0,
      undone: 0,
      toHanded: { of: 2, median: 1, most: 1.5 },
      toDone: { of: 3, median: 2, most: 6 },
    });
  });

  it("that are open: handed to nobody, or without a word of what was done", () => {
    const flags = of([placed(), flagRaised()], [placed(), flagRaised(), flagHanded()]).flags;
    expect(flags).toMatchObject({ raised: 2, unhanded: 1, undone: 1, toDone: { of: 0, median: null } });
  });
});

describe("records", () => {
  it("in place by kind, the most first; ended by how", () => {
    const figures = of(
      [placed(), placed({ tube: "tube-2", number: 2, side: "right" })],
      [placed({ kind: "abscess drain", side: "not sided" }), removed({ on: "2026-08-20" })],
      [placed(), fellOut({ on: "2026-08-18" }), notReplaced({ on: "2026-08-19" })],
      [placed(), converted({ on: "2026-08-20" })],
      [placed(), died({ on: "2026-08-20" })],
    );
    expect(figures.inPlace).toEqual([
      { kind: "nephrostomy", tubes: 2 },
      { kind: "nephroureteral catheter", tubes: 1 },
    ]);
    expect(figures.open).toBe(3);
    expect(figures.ended).toEqual({
      removed: 1,
      "not replaced": 1,
      converted: 1,
      "accepted elsewhere": 0,
      died: 1,
      "follow-up ended": 0,
    });
  });

  it("each count is what stands behind it", () => {
    const patients = [
      [placed(), rang(), reached("2026-08-18")],
      [placed(), rang({ on: "2026-08-20" })],
      [placed(), removed({ on: "2026-08-20" }), flagRaised(), flagDone()],
      [placed(), letterSent(), notReachedDecided({ on: "2026-08-21" }), flagRaised()],
    ].map((entries) => fold(history(...entries)));
    const figures = figuresOf(patients, span, zone("UTC"));
    const counts: Record<string, number> = { "red flags": figures.flags.raised, trying: figures.trying };
    for (const [way, count] of Object.entries(figures.reached)) counts[`reached ${way}`] = count;
    for (const [way, count] of Object.entries(figures.ended)) counts[`ended ${way}`] = count;
    for (const name of figureNames)
      expect([name, patients.flatMap((patient) => daysBehind(patient, name, span)).length]).toEqual([
        name,
        counts[name],
      ]);
  });

  it("in whatever order the patients come, the figures are the same", () => {
    const [one, other] = [
      [placed(), rang()],
      [placed({ kind: "chest tube" }), reached("2026-08-18")],
    ] as const;
    expect(of(one, other)).toEqual(of(other, one));
  });
});
