import { describe, expect, it } from "vitest";
import { decide } from "#shared/tube/decide.ts";
import { fold } from "#shared/tube/fold.ts";
import { died, placed, reconciled, removed, reportedOut, voided } from "#tests/support/factories.ts";
import { kindsAfter, stepAfter, stepsAfter } from "#tests/support/steps.ts";
import { command, history, now } from "#tests/support/told.ts";

const stent = placed({ kind: "ureteral stent", side: "left", plan: { act: "remove", by: "2026-10-01" } });
const nephrostomy = placed({ tube: "tube-2", number: 2, side: "left" });
const both = [stent, nephrostomy];
const told = reportedOut({ on: "2026-08-17" });
const out = (tube: string, on = "2026-08-16") => removed({ tube, on, toldBy: "urology" });
const WHICH = "which tube out";

describe("hard case 22: told that one is out, not which", () => {
  it("somebody is to find out, at once, and every date stands", () => {
    expect(stepAfter([...both, told], WHICH)).toMatchObject({
      tubeId: null,
      dueOn: "2026-08-17",
      owner: { role: "nurse", staffId: null },
      why: [
        {
          code: "reported-out",
          args: { tubes: "Left ureteral stent (tube 1), or Left nephrostomy (tube 2)", toldBy: "urology" },
        },
      ],
    });
    const others = stepsAfter([...both, told]).filter(({ kind }) => kind !== WHICH);
    expect(others).toEqual(stepsAfter(both));
  });

  it.each(["tube-1", "tube-2"])(
    "the removal of %s answers it, though it was earlier that day, and is still to be confirmed",
    (tube) => {
      const kinds = kindsAfter([...both, told, out(tube)]);
      expect(kinds).not.toContain(WHICH);
      expect(kinds).toContain("confirm removal");
    },
  );

  it("the removal of a tube that was not meant does not", () => {
    const right = placed({ tube: "tube-3", number: 3, side: "right" });
    expect(kindsAfter([...both, right, told, out("tube-3")])).toContain(WHICH);
  });

  it("saying how it was found answers it; agreeing on something else does not; a death does", () => {
    expect(kindsAfter([...both, told, reconciled({ on: "2026-08-18", about: "which tube" })])).not.toContain(
      WHICH,
    );
    expect(kindsAfter([...both, told, reconciled({ on: "2026-08-18", about: "sides" })])).toContain(WHICH);
    expect(kindsAfter([...both, told, died({ on: "2026-08-20" })])).not.toContain(WHICH);
  });

  it("undone, everything is as before; and so is the removal that answered it", () => {
    expect(stepsAfter([...both, told, voided("e3")])).toEqual(stepsAfter(both));
    expect(kindsAfter([...both, told, out("tube-1"), voided("e4")])).toContain(WHICH);
  });

  it("one that the patient does not have, one named twice, one that is out already: refused", () => {
    const asked = (events = history(...both), candidates = ["tube-1", "tube-2"]) =>
      decide(
        events,
        command(reportedOut({ candidates: candidates.map((tube) => ({ tube, number: 1 })) })),
        now("2026-08-20"),
      );
    expect(asked()).toMatchObject({ ok: true });
    expect(asked(history(stent))).toMatchObject({ refusals: [{ code: "tube-unknown" }] });
    expect(asked(undefined, ["tube-1", "tube-1"])).toMatchObject({ refusals: [{ code: "choice-repeated" }] });
    expect(asked(history(...both, out("tube-2")))).toMatchObject({
      refusals: [{ code: "candidate-not-in" }],
    });
  });

  it("of a tube that was placed after that day it cannot be told", () => {
    const later = placed({ tube: "tube-2", number: 2, on: "2026-08-18", side: "left" });
    expect(fold(history(stent, later, told)).contradictions).toMatchObject([
      { code: "event-before-opening", tubeId: "tube-2" },
    ]);
  });
});
