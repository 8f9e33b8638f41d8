import { describe, expect, it } from "vitest";
import { eventForms } from "#shared/record/event-forms.ts";
import { payloads } from "#shared/tube/payloads.ts";
import { formContext } from "#tests/factories/form-context.ts";

const context = formContext();
const today = { precision: "day", earliest: "2026-11-06", latest: "2026-11-06" };
const yes = { certainty: "confirmed", value: true };
const no = { certainty: "confirmed", value: false };
const unknown = { certainty: "unknown" };
/** A thing of which nothing is known. */
const bare = {
  outside: unknown,
  tolerance: null,
  inside: { takes: unknown, bores: [], endHole: unknown },
  length: unknown,
};
const cm = 15_000_000;

/** The forms of few fields: what is typed, and the literal payload. The larger forms have files of their own. */
const examples = [
  [
    "checked",
    { finding: "no leak", study: "nephrostogram", concerns: "crust, hard" },
    { study: "nephrostogram", finding: "no leak", concerns: ["crusted", "hard to flush"] },
  ],
  ["capped", { covers: "the ward", bagAtHome: "yes" }, { covers: "the ward", bagAtHome: yes }],
  ["capped", {}, { covers: null, bagAtHome: unknown }],
  ["uncapped", {}, { mode: "to bag" }],
  ["uncapped", { mode: "to suction" }, { mode: "to suction" }],
  [
    "tip position",
    { inPlace: "no", where: "back in the stomach" },
    { inPlace: no, where: "back in the stomach" },
  ],
  ["partly dislodged", {}, { externalLength: unknown, note: null }],
  [
    "partly dislodged",
    { externalLength: "14.5", toldBy: "patient" },
    { externalLength: { certainty: "reported", value: 14.5 * cm }, toldBy: "patient", note: null },
  ],
  ["fell out", { whole: "yes" }, { whole: yes, note: null }],
  [
    "fell out",
    { whole: "yes", toldBy: "home nurse" },
    { whole: { certainty: "reported", value: true }, toldBy: "home nurse", note: null },
  ],
  [
    "not replaced",
    { decidedBy: "Dr Example", reason: "drained dry" },
    { decidedBy: "Dr Example", reason: "drained dry" },
  ],
  [
    "removed",
    { whole: "yes", loopReleased: "yes", byWhom: "Dr Example", seenHow: "under imaging" },
    { whole: yes, loopReleased: yes, seenHow: "under imaging", byWhom: "Dr Example", toldBy: null },
  ],
  [
    "removed",
    { whole: "yes", toldBy: "patient" },
    {
      whole: { certainty: "reported", value: true },
      loopReleased: unknown,
      seenHow: null,
      byWhom: null,
      toldBy: "patient",
    },
  ],
  ["died", { toldBy: "family" }, { toldBy: "family" }],
  ["verified", { how: "report read" }, { how: "report read" }],
  [
    "clock dated",
    { catheterSince: "14 mar", how: "operation note" },
    {
      catheterSince: { precision: "day", earliest: "2026-03-14", latest: "2026-03-14" },
      tractSince: null,
      how: "operation note",
    },
  ],
  [
    "plan recorded",
    { plan: "review by +14" },
    { plan: { act: "review", by: "2026-11-20", byWhom: null, reason: null } },
  ],
  [
    "exchange planned",
    { on: "+7", wire: ".038 in", size: "8 f", takes: ".035 in" },
    {
      on: "2026-11-13",
      kind: "nephrostomy",
      size: { certainty: "confirmed", value: 4_000_000 },
      takes: { certainty: "confirmed", value: 1_333_500 },
      wire: { certainty: "confirmed", value: 1_447_800 },
      things: {
        wire: {
          sort: "wire",
          name: "the wire",
          ...bare,
          outside: { certainty: "confirmed", value: 1_447_800 },
        },
        toCome: {
          sort: "tube",
          name: "the tube to come",
          ...bare,
          outside: { certainty: "confirmed", value: 4_000_000 },
          inside: { ...bare.inside, takes: { certainty: "confirmed", value: 1_333_500 } },
        },
        stiffener: null,
        sheath: null,
      },
      agreedBy: null,
      reason: null,
      seen: [],
    },
  ],
  [
    "exchange planned",
    { kind: "nuc" },
    {
      on: null,
      kind: "nephroureteral catheter",
      size: unknown,
      takes: unknown,
      wire: unknown,
      things: {
        wire: { sort: "wire", name: "the wire", ...bare },
        toCome: { sort: "tube", name: "the tube to come", ...bare },
        stiffener: null,
        sheath: null,
      },
      agreedBy: null,
      reason: null,
      seen: [],
    },
  ],
  [
    "conditions noted",
    { stoneFormer: "yes", allergies: "none known", toldBy: "patient" },
    {
      conditions: {
        stoneFormer: { certainty: "reported", value: true },
        allergies: { certainty: "reported", value: "none known" },
      },
      toldBy: "patient",
    },
  ],
  ["conditions noted", { pregnancy: "?" }, { conditions: { pregnancy: unknown } }],
  ["step assigned", { step: "exchange", owner: "any lead" }, { step: "exchange", owner: { role: "lead" } }],
  [
    "step assigned",
    { step: "tube out", owner: "staff-physician" },
    { step: "tube out", owner: { role: "physician", staffId: "staff-physician" } },
  ],
  ["called", { outcome: "not reached" }, { outcome: "not reached", note: null }],
] as const;

describe.each(examples)("%s", (kind, texts, payload) => {
  it(`reads ${JSON.stringify(texts)} to its payload`, () => {
    const result = eventForms[kind].read(texts, context);
    const time = kind === "called" ? "15:30" : null;
    expect(result).toEqual({ ok: true, entry: { kind, when: today, time, payload } });
    expect(payloads[kind].parse(payload)).toEqual(payload);
  });
});

describe("what these forms refuse", () => {
  it.each([
    ["checked", { concerns: "soggy" }, "concerns", "word-unknown"],
    ["checked", { when: "tomorrow" }, "when", "day-in-future"],
    ["capped", { when: "7 nov 2026" }, "when", "day-in-future"],
    ["capped", { bagAtHome: "perhaps" }, "bagAtHome", "choice-unknown"],
    ["uncapped", { mode: "capped" }, "mode", "choice-unknown"],
    ["tip position", {}, "inPlace", "text-missing"],
    ["partly dislodged", { externalLength: "14 F" }, "externalLength", "length-unit-unfit"],
    ["fell out", { when: "" }, "when", "day-missing"],
    ["not replaced", { decidedBy: "Dr Example" }, "reason", "text-missing"],
    ["removed", {}, "whole", "text-missing"],
    ["died", { when: "+1" }, "when", "day-in-future"],
    ["verified", {}, "how", "text-missing"],
    ["clock dated", {}, "catheterSince", "day-missing"],
    ["clock dated", { catheterSince: "?" }, "catheterSince", "day-missing"],
    ["clock dated", { catheterSince: "1 oct", tractSince: "2 oct" }, "tractSince", "tract-after-tube"],
    ["plan recorded", { plan: "as protocol" }, "plan", "text-missing"],
    ["exchange planned", { wire: ".035" }, "wire", "length-needs-unit"],
    ["exchange planned", { wire: "8 F" }, "wire", "length-unit-unfit"],
    ["exchange planned", { size: "800 F" }, "size", "length-absurd"],
    ["exchange planned", { on: "in march" }, "on", "day-not-exact"],
    ["conditions noted", { toldBy: "patient" }, "allergies", "nothing-said"],
    ["step assigned", { step: "exchange" }, "owner", "text-missing"],
    ["step assigned", { step: "exchange", owner: "staff-nobody" }, "owner", "choice-unknown"],
    ["called", { outcome: "" }, "outcome", "text-missing"],
    ["called", { outcome: "not reached", when: "today 23:00" }, "when", "time-in-future"],
  ] as const)("%s %j: %s, %s", (kind, texts, field, code) => {
    expect(eventForms[kind].read(texts, context)).toMatchObject({
      ok: false,
      refusals: [{ field, code }],
    });
  });
});

it("opens a check with the concerns that stand, so that leaving one out is a finding", () => {
  const tube = {
    id: "tube-1",
    kind: "nephrostomy",
    role: "drains an organ",
    mode: "to bag",
    side: yes as never,
    concerns: ["crusted"],
    inSince: null,
    alarm: [],
  } as const;
  const crusted = formContext({ tube });
  const kept = eventForms.checked.read({}, crusted);
  expect(kept).toMatchObject({ entry: { payload: { concerns: ["crusted"] } } });
  const gone = eventForms.checked.read({ concerns: "" }, crusted);
  expect(gone).toMatchObject({ entry: { payload: { concerns: [] } } });
});
