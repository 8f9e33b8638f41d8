import { describe, expect, it } from "vitest";
import { eventForms } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { tubeInForm } from "#shared/record/tube-in-form.ts";
import { fold } from "#shared/tube/fold.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { formContext, leftNephrostomy } from "#tests/factories/form-context.ts";
import { type Entry, exchanged, fellOut, newPuncture, placed, takenOver } from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";

/** Fri 6 Nov 2026, beside a tube that has been in since 20 Aug 2026. */
const context = formContext();

type Kind = keyof typeof eventForms;

const codesOf = (kind: Kind, texts: Texts, beside = context) => {
  const read = eventForms[kind].read(texts, beside);
  return read.ok ? [] : read.refusals.map(({ code, field }) => `${field}: ${code}`);
};

const decided = { owner: "any nurse", decidedBy: "Dr Example", when: "?" };
const tube = { kind: "pcn l", size: "8 f" };

describe("a day planned before the tube was placed is refused, on that day it is not", () => {
  it.each([
    ["placed", { ...tube, when: "1 nov" }, "plan", "exchange by 31 oct 2026", "exchange by 1 nov 2026"],
    ["placed", { ...tube, when: "in october" }, "plan", "review by 30 sep 2026", "review by 1 oct 2026"],
    [
      "taken over",
      { ...tube, from: "Far Dale", when: "1 nov", tractSince: "1 mar" },
      "plan",
      "remove by 28 feb 2026",
      "remove by 1 mar 2026",
    ],
    ["exchanged", { when: "1 nov" }, "plan", "exchange by 31 oct 2026", "exchange by 1 nov 2026"],
    ["new puncture", { when: "1 nov" }, "plan", "remove by 31 oct 2026", "remove by 1 nov 2026"],
    [
      "converted",
      { kind: "stent l", size: "7 f", when: "1 nov" },
      "plan",
      "remove by 31 oct 2026",
      "remove by 1 nov 2026",
    ],
    ["plan recorded", {}, "plan", "remove by 1 jan 2020", "remove by 20 aug 2026"],
    ["plan recorded", {}, "plan", "remove by 19 aug 2026", "remove by +7"],
    ["exchange planned", {}, "on", "19 aug 2026", "20 aug 2026"],
    ["removal decided", decided, "by", "19 aug 2026", "20 aug 2026"],
  ] as const)("%s %j", (kind, texts, field, before, on) => {
    expect(codesOf(kind, { ...texts, [field]: before })).toEqual([`${field}: plan-before-tube`]);
    expect(codesOf(kind, { ...texts, [field]: on })).toEqual([]);
  });

  it("says both days, and what to mend", () => {
    const read = eventForms["plan recorded"].read({ plan: "remove by 1 jan 2020" }, context);
    expect(!read.ok && read.refusals.map(refusalSentence)).toEqual([
      "Wed 1 Jan 2020 lies before the tube was placed (Thu 20 Aug 2026), so nothing can be planned for it. Type the day that is meant, with its year.",
    ]);
  });

  it("where nobody knows since when the tube was there, nothing is refused", () => {
    const beside = formContext({ tube: { ...leftNephrostomy, inSince: null } });
    expect(codesOf("plan recorded", { plan: "remove by 1 jan 2020" }, beside)).toEqual([]);
    expect(codesOf("placed", { ...tube, when: "?", plan: "remove by 1 jan 2020" })).toEqual([]);
    const told = { ...tube, from: "?", when: "1 nov", tractSince: "?", plan: "exchange by 1 jan 2020" };
    expect(codesOf("taken over", told)).toEqual([]);
  });
});

describe("since when a tube may have lain there", () => {
  const told = (...entries: readonly Entry[]) =>
    fold(history(...entries)).tubes.map((tube) => tubeInForm(tube).inSince);

  it.each([
    ["placed", [placed({ on: "2026-08-20" })], "2026-08-20"],
    [
      "its exchange begins no other",
      [placed({ on: "2026-08-20" }), exchanged({ on: "2026-10-01" })],
      "2026-08-20",
    ],
    [
      "a tract older than its record",
      [takenOver({ on: "2026-08-20", tractSince: "2026-03-01" })],
      "2026-03-01",
    ],
    ["a puncture that nobody dates", [takenOver({ on: "2026-08-20", tractSince: "?" })], null],
    [
      "a record older than its tract",
      [placed({ on: "2026-08-20" }), fellOut({ on: "2026-09-01" }), newPuncture({ on: "2026-09-02" })],
      "2026-08-20",
    ],
  ])("%s", (_name, entries, since) => {
    expect(told(...entries)).toEqual([since]);
  });
});
