import { describe, expect, it } from "vitest";
import { formOfStep, offeredForms, patientFormOfStep } from "#app/record/offered.ts";
import {
  mayRecord,
  patientFormOf,
  patientProcedures,
  slugOf,
  tubeFormOf,
  tubeProcedures,
} from "#app/record/procedures.ts";
import { isProcedure } from "#shared/access/may.ts";
import { visitKinds } from "#shared/step/step.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import { statuses } from "#shared/tube/state.ts";

const drain = {
  kind: "nephrostomy",
  mode: "to bag",
  retention: unknownFact,
  unverified: null,
  status: "in",
} as const;
const formsOf = (tube: Parameters<typeof offeredForms>[0]) =>
  offeredForms(tube).flatMap(({ forms }) => forms);

const nurse = { id: "n", userName: "n", fullName: "N", role: "nurse", isApprover: false } as const;
const caller = { ...nurse, role: "caller" } as const;

describe("what a screen offers", () => {
  it("of a tube that is out and undecided, the three ways on come first", () => {
    expect(formsOf({ ...drain, status: "out, undecided" }).slice(0, 3)).toEqual([
      "salvaged",
      "new puncture",
      "not replaced",
    ]);
  });

  it("of a tube that is in, an exchange comes first and no way on from out is offered", () => {
    const forms = formsOf(drain);
    expect(forms[0]).toBe("exchanged");
    expect(forms).not.toContain("salvaged");
  });

  it("a cap by what stands: cap an open tube, uncap a capped one, neither of a stent", () => {
    expect(formsOf(drain)).toContain("capped");
    expect(formsOf(drain)).not.toContain("uncapped");
    expect(formsOf({ ...drain, mode: "capped" })).toContain("uncapped");
    const stent = formsOf({ ...drain, kind: "ureteral stent", mode: "internal" });
    expect(stent.filter((form) => form === "capped" || form === "uncapped")).toEqual([]);
  });

  it("how a trial comes out while it runs, and its start while it does not", () => {
    expect(formsOf(drain)).toContain("clamp trial started");
    expect(formsOf(drain)).not.toContain("clamp trial passed");
    const running = formsOf({ ...drain, mode: "on a clamp trial" });
    expect(running).toEqual(expect.arrayContaining(["clamp trial passed", "clamp trial failed", "uncapped"]));
    expect(running).not.toContain("clamp trial started");
  });

  it("water only where a balloon holds it, by the record or else by its kind", () => {
    expect(formsOf(drain)).not.toContain("balloon checked");
    expect(formsOf({ ...drain, retention: confirmed("balloon") })).toContain("balloon checked");
    expect(formsOf({ ...drain, kind: "balloon gastrostomy" })).toContain("balloon checked");
  });

  it("fluid tests of a tube with a part outside, which is where the fluid is taken", () => {
    expect(formsOf(drain)).toContain("fluid tested");
    expect(formsOf({ ...drain, kind: "ureteral stent", mode: "internal" })).not.toContain("fluid tested");
    expect(formsOf({ ...drain, status: "out, undecided" })).not.toContain("fluid tested");
  });

  it("to confirm only where something was told and nobody has", () => {
    expect(formsOf(drain)).not.toContain("verified");
    expect(formsOf({ ...drain, unverified: { eventId: "e", recordedOn: "2026-11-06" as never } })).toContain(
      "verified",
    );
  });

  it.each(statuses)("no form twice, and at least one, while it is %s", (status) => {
    const forms = formsOf({ ...drain, status });
    expect(forms.length).toBeGreaterThan(0);
    expect(new Set(forms).size).toBe(forms.length);
  });

  it("what a role may: a caller records a call and no exchange", () => {
    expect(mayRecord(nurse, "exchanged")).toBe(true);
    expect(mayRecord(caller, "exchanged")).toBe(false);
    expect(mayRecord(caller, "told of the tube")).toBe(true);
  });
});

describe("the address of a form", () => {
  it.each(Object.keys(tubeProcedures) as (keyof typeof tubeProcedures)[])(
    "%s leads to its form and its procedure",
    (form) => {
      expect(tubeFormOf(slugOf(form))).toBe(form);
      expect(isProcedure(`record.${tubeProcedures[form]}`)).toBe(true);
    },
  );

  it.each(Object.keys(patientProcedures) as (keyof typeof patientProcedures)[])(
    "%s leads to its form and its procedure",
    (form) => {
      expect(patientFormOf(slugOf(form))).toBe(form);
      expect(isProcedure(`record.${patientProcedures[form]}`)).toBe(true);
    },
  );

  it.each(["nope", "", "constructor", "new puncture", "placed"])("%j is no form of a tube", (slug) => {
    expect(tubeFormOf(slug)).toBeUndefined();
  });

  it("every step but two entries that disagree, one of several tubes out, those of a visit and those of a call, leads to one form, of the tube or of the patient", () => {
    const without = Object.entries(formOfStep).filter(([, form]) => form === null);
    const ofCalls = [
      "call",
      "ask again",
      "call back",
      "alternate contact",
      "ask the referrer",
      "diary",
      "red flag",
    ];
    const manyAnswers = ["contradiction", "which tube out"];
    expect(without.map(([kind]) => kind).toSorted()).toEqual(
      [...manyAnswers, ...visitKinds, ...ofCalls, ...Object.keys(patientFormOfStep)].toSorted(),
    );
  });
});
