import { expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { fold } from "#shared/tube/fold.ts";
import { fluidResult, fluidTest, found } from "#tests/factories/fluid-test.ts";
import * as make from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";

const drain = make.placed({ kind: "abscess drain", on: "2026-08-10" });
const creatinine = fluidResult({ analyte: "creatinine", fluid: found(900), serum: found(90) });

/** The tests that stand after these entries, and whether anything contradicts. */
const standing = (...entries: readonly make.Entry[]) => {
  const { tubes, contradictions } = fold(history(drain, ...entries));
  return { tests: tubes[0]?.fluidTests, contradictions };
};

it("a tube whose fluid nobody tested has none", () => {
  expect(standing()).toEqual({ tests: {}, contradictions: [] });
});

it("the newest of each analyte stands, with its entry and its day", () => {
  const { tests, contradictions } = standing(
    make.fluidTested({ id: "both", on: "2026-08-14", results: [fluidResult(), creatinine] }),
    make.fluidTested({ id: "again", on: "2026-08-17", results: [fluidResult({ fluid: found(60) })] }),
  );
  expect(tests).toEqual({
    creatinine: fluidTest({ ...creatinine, eventId: "both" }),
    bilirubin: fluidTest({
      fluid: found(60),
      eventId: "again",
      recordedOn: day("2026-08-17"),
      when: make.when("2026-08-17"),
    }),
  });
  expect(contradictions).toEqual([]);
});

it("newest by the day on which it was taken, whatever was recorded last", () => {
  const late = make.fluidTested({
    id: "late",
    on: "2026-08-12",
    recordedOn: "2026-08-20",
    results: [fluidResult()],
  });
  const { tests } = standing(make.fluidTested({ id: "newest", on: "2026-08-14" }), late);
  expect(tests?.bilirubin?.eventId).toBe("newest");
});

it("another catheter leaves it standing, and a value may come when the tube is out", () => {
  const test = make.fluidTested({ id: "test", on: "2026-08-14", recordedOn: "2026-08-21" });
  expect(standing(test, make.exchanged({ on: "2026-08-20" })).tests?.bilirubin?.eventId).toBe("test");
  const { tests, contradictions } = standing(make.removed({ on: "2026-08-20" }), test);
  expect([tests?.bilirubin?.eventId, contradictions]).toEqual(["test", []]);
});

it("fluid that was taken when the tube was out cannot have come from it", () => {
  const { tests, contradictions } = standing(
    make.fellOut({ on: "2026-08-13" }),
    make.fluidTested({ on: "2026-08-14" }),
  );
  expect(tests).toEqual({});
  expect(contradictions).toMatchObject([{ code: "already-out" }]);
});

it("an entry that is voided takes its values with it", () => {
  const test = make.fluidTested({ id: "test", on: "2026-08-14" });
  expect(standing(test, make.voided("test", { on: "2026-08-15" })).tests).toEqual({});
});
