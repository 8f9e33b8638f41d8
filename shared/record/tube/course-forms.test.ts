import { describe, expect, it } from "vitest";
import { eventForms } from "#shared/record/event-forms.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { payloads } from "#shared/tube/payloads.ts";
import type { Side } from "#shared/tube/vocabulary.ts";
import { formContext } from "#tests/factories/form-context.ts";

const context = formContext();
const today = { precision: "day", earliest: "2026-11-06", latest: "2026-11-06" };
const yes = { certainty: "confirmed", value: true };
const told = { certainty: "reported", value: true };
const unknown = { certainty: "unknown" };

/** What is typed, and the literal payload. */
const examples = [
  ["repositioned", {}, { externalLength: unknown, seenHow: null, note: null }],
  [
    "flushed",
    { went: "hard", given: "~10", cameBack: "no", toldBy: "home nurse" },
    {
      went: "hard",
      given: { certainty: "estimated", value: 10_000 },
      cameBack: { certainty: "reported", value: false },
      toldBy: "home nurse",
      note: null,
    },
  ],
  ["flushed", { went: "not at all" }, { went: "not at all", given: unknown, cameBack: unknown, note: null }],
  ["unblocked", { how: "a wire" }, { how: "a wire", note: null }],
  ["clamp trial started", { bagAtHome: "yes" }, { covers: null, bagAtHome: yes, note: null }],
  ["clamp trial passed", { mode: "clamped" }, { mode: "clamped", note: null }],
  ["clamp trial failed", { note: "pain" }, { mode: "to bag", note: "pain" }],
  ["suction changed", { mode: "to bulb" }, { mode: "to bulb", pressure: null, note: null }],
  [
    "balloon checked",
    { found: "8", refilled: "?" },
    { found: { ...yes, value: 8 }, refilled: unknown, note: null },
  ],
  ["anchors removed", { what: "2 anchors" }, { what: "2 anchors", note: null }],
  ["anchors removed", { what: "suture", fixation: "?" }, { what: "suture", fixation: unknown, note: null }],
  [
    "anchors removed",
    { what: "none", fixation: "disc" },
    { what: "none", fixation: { ...yes, value: "disc" }, note: null },
  ],
  ["blocked", {}, { note: null }],
  ["leaking", { soaking: "yes", toldBy: "patient" }, { soaking: told, toldBy: "patient", note: null }],
  ["infected", { fever: "?" }, { fever: unknown, note: null }],
  ["bled", { heavy: "yes" }, { heavy: yes, note: null }],
  ["broken", { fragmentInside: "yes", part: "string" }, { fragmentInside: yes, part: "string", note: null }],
  [
    "removal decided",
    { by: "20 nov", owner: "staff-physician", decidedBy: "Dr Example" },
    {
      by: "2026-11-20",
      owner: { role: "physician", staffId: "staff-physician" },
      decidedBy: "Dr Example",
      reason: null,
    },
  ],
  ["handed over", { to: "urology" }, { to: "urology", person: null, note: null }],
  ["accepted elsewhere", { by: "Dr Example" }, { by: "Dr Example", place: null, how: null }],
  ["transferred", { place: "Far Dale" }, { place: "Far Dale", findOut: [], askWhom: null, note: null }],
  [
    "hospice decided",
    { calls: "go on", exchanges: "stop", until: "31 dec", decidedBy: "Dr Example", team: "home hospice" },
    {
      calls: "go on",
      exchanges: "stop",
      until: "2026-12-31",
      decidedBy: "Dr Example",
      team: "home hospice",
      note: null,
    },
  ],
  ["whereabouts noted", { place: "at home" }, { place: "at home", where: null, note: null }],
  [
    "reconcile asked",
    { about: "which tube", says: "urology took it out", toldBy: "patient" },
    { about: "which tube", says: "urology took it out", toldBy: "patient" },
  ],
  ["reconciled", { about: "sides", how: "films seen" }, { about: "sides", how: "films seen", sides: [] }],
] as const;

describe.each(examples)("%s", (kind, texts, payload) => {
  it(`reads ${JSON.stringify(texts)} to its payload`, () => {
    const result = eventForms[kind].read(texts, context);
    expect(result).toEqual({ ok: true, entry: { kind, when: today, time: null, payload } });
    expect(payloads[kind].parse(payload)).toEqual(payload);
  });
});

describe("what these forms refuse", () => {
  it.each([
    ["downsized", {}, "size", "text-missing"],
    ["flushed", {}, "went", "text-missing"],
    ["flushed", { went: "hard", given: "10 F" }, "given", "volume-not-understood"],
    ["clamp trial passed", { mode: "on a clamp trial" }, "mode", "choice-unknown"],
    ["suction changed", { mode: "capped" }, "mode", "choice-unknown"],
    ["balloon checked", { found: "8" }, "refilled", "text-missing"],
    ["balloon checked", { found: "61", refilled: "10" }, "found", "volume-absurd"],
    ["anchors removed", {}, "what", "text-missing"],
    ["leaking", {}, "soaking", "text-missing"],
    ["infected", {}, "fever", "text-missing"],
    ["bled", {}, "heavy", "text-missing"],
    ["broken", {}, "fragmentInside", "text-missing"],
    ["removal decided", { owner: "any nurse", decidedBy: "Dr Example" }, "by", "text-missing"],
    ["removal decided", { by: "+14", decidedBy: "Dr Example" }, "owner", "text-missing"],
    ["removal decided", { by: "+14", owner: "any nurse" }, "decidedBy", "text-missing"],
    ["handed over", {}, "to", "text-missing"],
    [
      "hospice decided",
      { calls: "stop", exchanges: "stop", until: "-1", decidedBy: "Dr Example" },
      "until",
      "day-before-decision",
    ],
    [
      "removal decided",
      { by: "-1", owner: "any nurse", decidedBy: "Dr Example" },
      "by",
      "day-before-decision",
    ],
    ["accepted elsewhere", { place: "urology" }, "by", "text-missing"],
    ["transferred", { place: "Far Dale", findOut: "color" }, "findOut", "word-unknown"],
    ["reconciled", { about: "sides" }, "how", "text-missing"],
  ] as const)("%s %j: %s, %s", (kind, texts, field, code) => {
    const result = eventForms[kind].read(texts, context);
    expect(result).toMatchObject({ ok: false });
    expect(!result.ok && result.refusals).toContainEqual(expect.objectContaining({ field, code }));
  });
});

describe("sides are reconciled", () => {
  const tubes = [
    { id: "tube-1", number: 1, kind: "nephrostomy", side: confirmed<Side>("left"), status: "in" },
    { id: "tube-2", number: 2, kind: "nephrostomy", side: confirmed<Side>("right"), status: "in" },
  ] as const;
  const beside = formContext({ tube: null, tubes });

  it("tube by tube, named as the record has them now; a blank leaves one as it stands", () => {
    const fields = eventForms.reconciled.fields(beside) as unknown as Record<string, { label: string }>;
    expect(fields.side2?.label).toBe("Side of tube 2: Right nephrostomy");
    const read = (texts: Record<string, string>) =>
      eventForms.reconciled.read({ about: "sides", how: "films seen", ...texts }, beside);
    expect(read({ side1: "r", side2: "l" })).toMatchObject({
      entry: {
        payload: {
          sides: [
            { tube: "tube-1", number: 1, side: confirmed("right") },
            { tube: "tube-2", number: 2, side: confirmed("left") },
          ],
        },
      },
    });
    expect(read({ side2: "?" })).toMatchObject({
      entry: { payload: { sides: [{ tube: "tube-2", number: 2, side: unknown }] } },
    });
    expect(read({ side1: "upper" })).toMatchObject({ refusals: [{ field: "side1", code: "word-unknown" }] });
  });
});
