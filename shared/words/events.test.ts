import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { callPayloads } from "#shared/tube/call-payloads.ts";
import { carePayloads } from "#shared/tube/care-payloads.ts";
import { coursePayloads } from "#shared/tube/course-payloads.ts";
import { eventKinds } from "#shared/tube/event-kinds.ts";
import { type EventKind, payloads } from "#shared/tube/payloads.ts";
import { visitPayloads } from "#shared/tube/visit-payloads.ts";
import { actLabels } from "./acts.ts";
import { storySentence } from "./events.ts";

const nameOf = (id: string): string => (id === "staff-nurse" ? "Tansy Nurseworth" : "unknown");

const confirmed = (value: unknown) => ({ certainty: "confirmed", value });
const reported = (value: unknown) => ({ certainty: "reported", value });
const estimated = (value: unknown) => ({ certainty: "estimated", value });
const unknown = { certainty: "unknown" };
const F8 = 4_000_000;
const F10 = 5_000_000;
const IN035 = 1_333_500;
const IN038 = 1_447_800;
const cm = 15_000_000;

const opening = {
  kind: "nephrostomy",
  role: "drains an organ",
  mode: "to bag",
  number: 1,
  side: confirmed("left"),
  organ: "kidney",
  route: null,
  cavity: null,
  indication: null,
  cancerObstruction: unknown,
  facts: { size: confirmed(F8), takes: unknown },
  plan: null,
};
const renewal = { facts: {}, plan: null, elsewhere: null, difficult: false, note: null };
const plan = { act: "exchange", by: "2026-10-30", byWhom: "Dr Example", reason: null };
const march = { precision: "month", earliest: "2026-03-01", latest: "2026-03-31" };
const undated = { precision: "unknown", earliest: null, latest: null };

const told: readonly (readonly [EventKind, unknown, string])[] = [
  ["placed", opening, "Placed: Left nephrostomy, 8 F."],
  [
    "placed",
    { ...opening, side: unknown, facts: { size: unknown }, cancerObstruction: confirmed(true), plan },
    "Placed: Side unknown: nephrostomy, size unknown, obstruction by cancer, plan: Exchange by Fri 30 Oct 2026, Dr Example.",
  ],
  [
    "taken over",
    { ...opening, facts: { size: reported(F8) }, from: "Invented General", tractSince: march },
    "Taken over: Left nephrostomy, 8 F, from Invented General (reported), punctured March 2026.",
  ],
  [
    "taken over",
    { ...opening, facts: { size: unknown }, from: null, tractSince: undated },
    "Taken over: Left nephrostomy, size unknown, from elsewhere (reported).",
  ],
  [
    "checked",
    { study: "nephrostogram", finding: "No leak.", concerns: ["crusted"] },
    "Checked: nephrostogram, crusted. No leak.",
  ],
  ["checked", { study: null, finding: null, concerns: [] }, "Checked."],
  ["exchanged", renewal, "Exchanged."],
  [
    "exchanged",
    { ...renewal, facts: { size: reported(F8) }, elsewhere: "Invented General" },
    "Exchanged: 8 F, elsewhere, at Invented General (reported).",
  ],
  [
    "exchanged",
    {
      ...renewal,
      facts: { size: estimated(F10), takes: confirmed(IN035), externalLength: confirmed(12 * cm) },
      difficult: true,
      note: "Hard at the hub.",
    },
    "Exchanged: about 10 F, takes 0.035 in, 12 cm outside, difficult. Hard at the hub.",
  ],
  ["upsized", { ...renewal, facts: { size: confirmed(F10) } }, "Upsized: 10 F."],
  ["salvaged", { ...renewal, facts: { size: unknown } }, "Salvaged through the old tract: size unknown."],
  ["new puncture", renewal, "Replaced by a new puncture."],
  [
    "capped",
    { covers: "the ward", bagAtHome: confirmed(true) },
    "Capped: calls covered by the ward, a bag is at home.",
  ],
  [
    "capped",
    { covers: null, bagAtHome: unknown },
    "Capped: nobody named to cover the calls, unknown whether a bag is at home.",
  ],
  ["uncapped", { mode: "to bag" }, "Uncapped: to bag."],
  [
    "tip position",
    { inPlace: confirmed(false), where: "back in the stomach" },
    "Tip: not in place, back in the stomach.",
  ],
  [
    "partly dislodged",
    { externalLength: reported(16 * cm), toldBy: "patient", note: null },
    "Pulled back: 16 cm outside (reported), told by patient.",
  ],
  ["partly dislodged", { externalLength: unknown, note: null }, "Pulled back: external length unknown."],
  ["fell out", { whole: confirmed(true), note: null }, "Fell out: whole."],
  [
    "fell out",
    { whole: confirmed(true), oldTube: "kept", note: null },
    "Fell out: whole, the old tube: kept.",
  ],
  [
    "partly dislodged",
    { externalLength: unknown, oldTube: "thrown away", note: null },
    "Pulled back: external length unknown, the old tube: thrown away.",
  ],
  [
    "fell out",
    { whole: reported(false), toldBy: "home nurse", note: null },
    "Fell out: not whole: a piece is left (reported), told by home nurse.",
  ],
  ["not replaced", { decidedBy: "Dr Example", reason: "Dry." }, "Not replaced: decided by Dr Example. Dry."],
  ["converted", { closes: "a", opens: "b", opening }, "Converted: Left nephrostomy, 8 F."],
  [
    "removed",
    {
      whole: confirmed(true),
      loopReleased: unknown,
      seenHow: "under imaging",
      byWhom: "Dr Example",
      toldBy: null,
    },
    "Removed: whole, unknown whether the loop was released, by Dr Example, under imaging.",
  ],
  [
    "removed",
    {
      whole: confirmed(true),
      loopReleased: confirmed(true),
      stringOut: confirmed(false),
      siteCheckOn: "2026-11-09",
      seenHow: null,
      byWhom: null,
      toldBy: null,
    },
    "Removed: whole, loop released, string not out, site looked at on Mon 9 Nov 2026.",
  ],
  [
    "review asked",
    { by: "2026-11-09", askedBy: "the ward", reason: "fever" },
    "Review asked for: by Mon 9 Nov 2026, asked by the ward. fever.",
  ],
  [
    "review decided",
    {
      decidedBy: "Dr Example",
      decided: [
        { what: "leave in", by: "2026-11-20", owner: { role: "physician" } },
        { what: "imaging", by: "2026-11-13", owner: { role: "nurse" } },
      ],
      words: "still drains",
      closes: ["review"],
      evidence: null,
    },
    "Reviewed: by Dr Example, leave in, review on Fri 20 Nov 2026 (physician), imaging by Fri 13 Nov 2026 (scheduling nurse). still drains.",
  ],
  ["decision done", { what: "fluid tests", how: "sent" }, "Done as decided: fluid tests. sent."],
  ["died", { toldBy: "family" }, "Died: told by family."],
  ["died", { toldBy: null }, "Died."],
  [
    "facts noted",
    {
      facts: {
        size: confirmed(F8),
        takes: unknown,
        bores: [{ place: "hub", inside: confirmed(3_000_000), tolerance: null }],
        endHole: confirmed("open"),
        retention: confirmed("locking loop"),
        balloonMl: confirmed(8),
        fullLength: confirmed(25 * cm),
        fixation: confirmed("two anchors"),
        flushOrder: confirmed("none"),
        expectedFluid: ["clear", "clots"],
      },
      mode: "to suction",
      toldBy: "letter",
      note: null,
    },
    "Noted: 8 F, what wire it takes unknown, hub 2 mm (0.079 in) inside, end hole open, held by locking loop, 8 mL in the balloon, 25 cm long, fixed by two anchors, flush ordered: none, expected fluid: clear, clots, to suction, told by letter.",
  ],
  ["verified", { how: "report read" }, "Confirmed: report read."],
  [
    "clock dated",
    { catheterSince: march, tractSince: null, how: "operation note" },
    "Dated: in place since March 2026, operation note.",
  ],
  ["plan recorded", { plan }, "Plan: Exchange by Fri 30 Oct 2026, Dr Example."],
  [
    "exchange planned",
    {
      on: "2026-10-30",
      kind: "nephrostomy",
      size: confirmed(F8),
      takes: confirmed(IN035),
      wire: confirmed(IN038),
      seen: [],
    },
    "Exchange planned: for Fri 30 Oct 2026, nephrostomy, 8 F, takes 0.035 in, over a wire of 0.038 in.",
  ],
  [
    "exchange planned",
    { on: null, kind: "nephrostomy", size: unknown, takes: unknown, wire: unknown, seen: [] },
    "Exchange planned: no day set, nephrostomy, size unknown, what wire it takes unknown, wire unknown.",
  ],
  [
    "conditions noted",
    {
      conditions: {
        stoneFormer: confirmed(true),
        hospice: confirmed(false),
        allergies: reported("latex"),
        isolation: unknown,
      },
    },
    "Noted of the patient: stone former yes, hospice no, allergies: latex, isolation: unknown.",
  ],
  [
    "step assigned",
    { step: "exchange", owner: { role: "nurse", staffId: "staff-nurse" } },
    'Step given: "Exchange" to Tansy Nurseworth.',
  ],
  ["step assigned", { step: "tube out", owner: { role: "lead" } }, 'Step given: "Tube out: decide" to lead.'],
  ["called", { outcome: "not reached", note: null }, "Called: not reached."],
  ["dates confirmed", { note: null }, "New dates confirmed."],
  [
    "amended",
    { reason: "Wrong size typed.", when: march, time: null, payload: {} },
    "Amended. Wrong size typed.",
  ],
  [
    "alarm closed",
    { answers: [{ key: "dry:r1", until: null }], done: "unkinked", by: "Dr Example", note: null },
    "Alarm closed: unkinked, by Dr Example.",
  ],
  [
    "alarm closed",
    {
      answers: [
        { key: "dry:r1", until: null },
        { key: "low:2026-03-01", until: null },
      ],
      done: "other",
      by: "Dr Example",
      note: "Rang the ward.",
    },
    "Alarm closed: other, by Dr Example, 2 reasons answered. Rang the ward.",
  ],
  [
    "usual level accepted",
    { row: "low", mlPer24h: 60, until: day("2026-03-31"), acceptedBy: "Dr Example", note: null },
    "Usual level accepted: low output, 60 mL/24 h, until Tue 31 Mar 2026, by Dr Example.",
  ],
  ["voided", { reason: "Entered twice.", wrongPatient: false }, "Voided. Entered twice."],
  ["voided", { reason: "Somebody else's.", wrongPatient: true }, "Voided: wrong patient."],
];

describe("an entry in the story", () => {
  it.each(told)("%s: %j", (kind, payload, sentence) => {
    expect(payloads[kind].safeParse(payload).error?.issues).toBeUndefined();
    expect(storySentence({ kind, payload }, nameOf)).toBe(sentence);
  });

  it("has an example of every kind here, in course-events.test.ts, visit-events.test.ts or call-events.test.ts, and an act that records it", () => {
    const elsewhere: readonly string[] = [
      "downsized",
      ...Object.keys(coursePayloads),
      ...Object.keys(carePayloads),
      ...Object.keys(visitPayloads),
      ...Object.keys(callPayloads),
    ];
    const here = eventKinds.filter((kind) => !elsewhere.includes(kind));
    expect(new Set(told.map(([kind]) => kind))).toEqual(new Set(here));
    expect(Object.keys(actLabels)).toEqual(eventKinds);
    expect(actLabels.exchanged).toBe("Record an exchange");
  });
});
