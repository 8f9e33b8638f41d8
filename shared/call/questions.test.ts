import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { fold } from "#shared/tube/fold.ts";
import { type TubeKind, tubeKinds } from "#shared/tube/kind/kinds.ts";
import {
  capped,
  conditionsNoted,
  type Entry,
  fellOut,
  placed,
  removed,
  trialStarted,
} from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { openedBy, questionsOf } from "./questions.ts";

/** Which questions are asked of which tube, and what an answer opens, by the example rows: common practice, no source. */
const rows = exampleProtocol.calls?.questions ?? [];
const patient = (...entries: readonly Entry[]) => fold(history(...entries));

const askedOf = (...entries: readonly Entry[]): string[] =>
  questionsOf(rows, patient(...entries)).map(({ row, tube }) =>
    tube === null ? row.id : `${row.id} ${tube.number}`,
  );

const openedIn = (id: string, ...entries: readonly Entry[]) => {
  const of = patient(...entries);
  const asked = questionsOf(rows, of).find(({ row }) => row.id === id);
  if (asked === undefined) throw new Error(`${id} is not asked`);
  const { flag, ifSo } = openedBy(asked, of, exampleProtocol);
  return [flag?.id ?? null, ...ifSo.map((one) => one.flag.id)];
};

const drain = placed({ kind: "abscess drain", side: "not sided" });
const well = conditionsNoted({
  conditions: { chemotherapy: confirmed(false), immuneSuppression: confirmed(false) },
});

describe("the questions of a call", () => {
  it("of a stent: none about output, a leak or the skin; whether they know of it", () => {
    const asked = askedOf(placed({ kind: "ureteral stent" }));
    expect(asked.filter((id) => id.endsWith(" 1"))).toEqual(["knows of it 1"]);
    expect(asked).toContain("fever");
  });

  it.each(tubeKinds)(
    "of %s: about what it drains only where that is measured, about water only of a balloon",
    (kind: TubeKind) => {
      const tube = patient(placed({ kind })).tubes[0]!;
      const asked = questionsOf(rows, { tubes: [tube] }).map(({ row }) => row.id);
      const role = tube.role;
      expect(asked.includes("draining")).toBe(
        ["collection", "drains an organ", "venting"].includes(role) && tube.mode !== "capped",
      );
      if (role === "internal" || role === "feeding" || role === "irrigation access")
        expect(asked).not.toContain("last volume");
      const held = (retention: "balloon" | "bumper") =>
        questionsOf(rows, { tubes: [{ ...tube, retention: confirmed(retention) }] }).map(({ row }) => row.id);
      expect(held("balloon")).toContain("balloon water");
      expect(held("bumper")).not.toContain("balloon water");
    },
  );

  it("of a shut tube: not whether it drains, but pain and jaundice since it was shut", () => {
    const shut = askedOf(placed(), capped({ on: "2026-08-17" }));
    expect(shut).toContain("while shut 1");
    expect(shut).not.toContain("draining 1");
    expect(askedOf(placed(), trialStarted({ on: "2026-08-17" }))).toContain("while shut 1");
    expect(askedOf(placed())).not.toContain("while shut 1");
  });

  it("are asked of the patient once and of each tube that is in, in their order", () => {
    const two = askedOf(drain, placed({ tube: "tube-2", number: 2, kind: "ureteral stent" }));
    expect(two.filter((id) => id.startsWith("fever"))).toEqual(["fever"]);
    expect(two.indexOf("supplies")).toBeLessThan(two.indexOf("come out 1"));
    expect(two.at(-1)).toBe("knows of it 2");
    expect(askedOf(drain, fellOut({ on: "2026-08-20" }))).toEqual([]);
  });

  it("are asked of a tube that was told removed: it may still be in", () => {
    expect(askedOf(drain, removed({ on: "2026-08-20", toldBy: "the ward" }))).toContain("come out 1");
    expect(askedOf(drain, removed({ on: "2026-08-20" }))).toEqual([]);
  });

  it("about headache and sweating are asked where the bladder or a kidney is drained", () => {
    expect(askedOf(placed())).toContain("headache and sweating");
    expect(askedOf(drain)).not.toContain("headache and sweating");
  });

  it("are none without rows", () => expect(questionsOf([], patient(drain))).toEqual([]));
});

describe("what an answer opens", () => {
  it("fever: the same day; on chemotherapy emergency services; under a shut tube the trial's row", () => {
    expect(openedIn("fever", drain, well)).toEqual(["fever"]);
    const chemo = conditionsNoted({ conditions: { chemotherapy: confirmed(true) } });
    expect(openedIn("fever", drain, chemo)).toEqual(["fever and immune suppression"]);
    expect(openedIn("fever", placed(), capped({ on: "2026-08-17" }), well)).toEqual(["trial with symptoms"]);
    // Of two the graver: emergency services before the same day.
    expect(openedIn("fever", placed(), capped({ on: "2026-08-17" }), chemo)).toEqual([
      "fever and immune suppression",
    ]);
  });

  it("what nobody knows of the patient is named with its flag, and never taken for absent", () => {
    expect(openedIn("fever", drain)).toEqual(["fever", "fever and immune suppression"]);
    const half = conditionsNoted({
      conditions: { chemotherapy: confirmed(false), immuneSuppression: unknownFact },
    });
    expect(openedIn("fever", drain, half)).toEqual(["fever", "fever and immune suppression"]);
    expect(openedIn("headache and sweating", placed())).toEqual([
      null,
      "cord injury and blocked bladder drain",
    ]);
  });

  it("a chest tube that is out is for emergency services, a drain that is out for the same day", () => {
    expect(openedIn("chest tube in place", placed({ kind: "chest tube" }))).toEqual(["chest tube out"]);
    expect(openedIn("come out", drain)).toEqual(["out or partly out"]);
  });

  it("a row that the table has not opens nothing", () => {
    const asked = questionsOf(rows, patient(drain)).find(({ row }) => row.id === "leak")!;
    expect(openedBy(asked, patient(drain), { redFlags: [] })).toEqual({ flag: null, ifSo: [] });
  });

  it("every row of the example that opens a flag names one of the table", () => {
    const ids = exampleProtocol.redFlags.map(({ id }) => id);
    const named = rows.flatMap(({ redFlag, instead }) => [redFlag, ...instead.map((one) => one.redFlag)]);
    expect(named.filter((id) => id !== null && !ids.includes(id))).toEqual([]);
  });
});
