import { expect, it } from "vitest";
import { eventForms } from "#shared/record/event-forms.ts";
import { readingForm } from "#shared/record/output/reading-form.ts";
import { formContext, leftNephrostomy } from "#tests/factories/form-context.ts";
import { pressKeys } from "#tests/support/press-keys.ts";

const MOST_KEYS = 30;
const tube = { kind: "nephrostomy", side: { certainty: "confirmed", value: "left" }, status: "in" } as const;
const dry = { key: "dry:r1", until: null, says: "Nothing drained for 7 h.", row: null };
const context = formContext({
  tube: { ...leftNephrostomy, alarm: [dry] },
  tubes: [
    { id: "tube-1", number: 1, ...tube },
    { id: "tube-2", number: 2, ...tube },
  ],
});
const confirmed = (value: unknown) => ({ certainty: "confirmed", value });

/** An ordinary entry of each kind as keys from the moment its form is open, and what of the payload they have to make. */
const ordinary = [
  ["placed", "pcn l\t\t8f\n", { kind: "nephrostomy", facts: { size: confirmed(4_000_000) } }],
  ["placed", "abscess\t\t10f\t-2\treview +14\n", { kind: "abscess drain", plan: { by: "2026-11-20" } }],
  ["taken over", "pcn r\t\t?\tin march\t\t?\n", { from: null, facts: { size: { certainty: "unknown" } } }],
  ["checked", "no leak\t\n", { finding: "no leak" }],
  ["exchanged", "\n", { facts: {}, elsewhere: null }],
  ["exchanged", "14 oct\t8f\t.035 in\n", { facts: { takes: confirmed(1_333_500) } }],
  ["exchanged", "-1\t\t\t\tInvented General\n", { elsewhere: "Invented General" }],
  ["upsized", "\t10f\t.038 in\n", { facts: { size: confirmed(5_000_000) } }],
  ["salvaged", "\t8f\n", { facts: { size: confirmed(4_000_000) } }],
  ["new puncture", "\t8f\n", { facts: { size: confirmed(4_000_000) } }],
  ["capped", "\tthe ward\ty\t\n", { covers: "the ward", bagAtHome: confirmed(true) }],
  ["uncapped", "\n", { mode: "to bag" }],
  ["tip position", "y\t\n", { inPlace: confirmed(true) }],
  ["partly dislodged", "\t16\tpatient\n", { externalLength: { certainty: "reported" } }],
  ["fell out", "today 9:30\ty\tpatient\n", { whole: { certainty: "reported", value: true } }],
  ["not replaced", "Dr Example\tdry\n", { decidedBy: "Dr Example", reason: "dry" }],
  ["converted", "jj\t6f\n", { opening: { kind: "ureteral stent", side: confirmed("left") } }],
  ["removed", "y\ty\t\tDr Example\n", { whole: confirmed(true), byWhom: "Dr Example" }],
  ["died", "-1\tfamily\n", { toldBy: "family" }],
  ["facts noted", "8f\n", { facts: { size: confirmed(4_000_000) } }],
  ["facts noted", "\t.035 in\n", { facts: { takes: confirmed(1_333_500) } }],
  ["verified", "report read\n", { how: "report read" }],
  ["clock dated", "14 mar\n", { catheterSince: { earliest: "2026-03-14" } }],
  ["plan recorded", "exchange by 30 dec\n", { plan: { act: "exchange", by: "2026-12-30" } }],
  [
    "exchange planned",
    "+14\t.038 in\t145\t8f\t.035 in\n",
    { wire: confirmed(1_447_800), takes: confirmed(1_333_500) },
  ],
  ["conditions noted", "latex\twarfarin\n", { conditions: { bloodThinners: confirmed("warfarin") } }],
  ["step assigned", "exch\tphys\t\n", { step: "exchange", owner: { role: "physician" } }],
  ["downsized", "\t8f\n", { facts: { size: confirmed(4_000_000) } }],
  ["repositioned", "\t14\tunder imaging\n", { seenHow: "under imaging" }],
  ["flushed", "easily\t10\ty\t\n", { went: "easily", given: confirmed(10_000), cameBack: confirmed(true) }],
  ["unblocked", "\tflushed\n", { how: "flushed" }],
  ["clamp trial started", "the ward\ty\t\n", { covers: "the ward" }],
  ["clamp trial passed", "\n", { mode: "capped" }],
  ["clamp trial failed", "\t\tpain\t\n", { mode: "to bag", note: "pain" }],
  ["suction changed", "to suc\t-20 cm water\n", { mode: "to suction", pressure: "-20 cm water" }],
  ["balloon checked", "8\t10\n", { found: confirmed(8), refilled: confirmed(10) }],
  ["anchors removed", "2 anchors\tdisc\n", { what: "2 anchors", fixation: confirmed("disc") }],
  ["blocked", "-1\tpatient\n", { toldBy: "patient" }],
  ["leaking", "y\t\tpatient\n", { soaking: { certainty: "reported", value: true } }],
  ["infected", "n\t\n", { fever: confirmed(false) }],
  ["bled", "n\t\n", { heavy: confirmed(false) }],
  ["broken", "n\thub\n", { fragmentInside: confirmed(false), part: "hub" }],
  [
    "fluid tested",
    "4200\t100\n",
    { results: [{ analyte: "amylase", fluid: { value: { level: 4_200_000_000_000 } } }] },
  ],
  ["removal decided", "+14\tsched\tDr Example\n", { by: "2026-11-20", owner: { role: "nurse" } }],
  ["review asked", "+2\tfever\n", { by: "2026-11-08", reason: "fever" }],
  [
    "review decided",
    "lea\t+14\tph\t\tDr Example\n",
    {
      decided: [{ what: "leave in", by: "2026-11-20", owner: { role: "physician" } }],
      decidedBy: "Dr Example",
      closes: ["review"],
    },
  ],
  ["decision done", "im\tdone 5 nov\n", { what: "imaging", how: "done 5 nov" }],
  ["handed over", "urology\tDr Example\n", { to: "urology", person: "Dr Example" }],
  ["accepted elsewhere", "Dr Example\turology\n", { by: "Dr Example", place: "urology" }],
  ["transferred", "Far Dale\tsize, what h\n", { findOut: ["size", "what holds it"] }],
  [
    "hospice decided",
    "st\tgo\t+30\tDr Example\n",
    { calls: "stop", exchanges: "go on", until: "2026-12-06" },
  ],
  ["whereabouts noted", "inp\tward 4\n", { place: "inpatient", where: "ward 4" }],
  [
    "clinical state noted",
    "37.2\tn\tw\t\n",
    { findings: { temperature: confirmed({ value: 37.2, asTyped: null }), feels: confirmed("well") } },
  ],
  ["reconcile asked", "sides\tit says right\n", { about: "sides", says: "it says right" }],
  ["follow-up ended", "Dr Example\tit stays\n", { decidedBy: "Dr Example" }],
  ["reported out", "urology\n", { toldBy: "urology", candidates: [{ number: 1 }, { number: 2 }] }],
  ["reconciled", "sides\tfilms seen\n", { about: "sides", how: "films seen" }],
  ["alarm closed", "flu\tDr Example\n", { done: "flushed and it ran", answers: [{ key: "dry:r1" }] }],
  ["usual level accepted", "low\t60\t+30\tDr Example\n", { row: "low", mlPer24h: 60, until: "2026-12-06" }],
  ["letter sent", "the p\t\n", { to: "the patient" }],
  [
    "not reached decided",
    "+14\tDr Example\tdoctor rung\t\n",
    { again: "2026-11-20", decidedBy: "Dr Example", reason: "doctor rung" },
  ],
  ["told of the tube", "the p\tEnglish\tTansy\n", { whom: "the patient", language: "English", by: "Tansy" }],
  ["called", "not\t\t\n", { outcome: "not reached" }],
  ["called", "reached the p\twell, dry\t\n", { outcome: "reached the patient", note: "well, dry" }],
] as const;

it.each(ordinary)("%s in at most 30 keys: %j", (kind, keys, payload) => {
  expect(keys.length).toBeLessThanOrEqual(MOST_KEYS);
  const fields = eventForms[kind].fields(context);
  const result = eventForms[kind].read(pressKeys(fields, keys), context);
  expect(result).toMatchObject({ ok: true, entry: { kind, payload } });
});

it("has an ordinary entry of every kind that a form records", () => {
  expect(new Set<string>(ordinary.map(([kind]) => kind))).toEqual(new Set(Object.keys(eventForms)));
});

it.each([
  ["35\t3 x 10\n", { gross: confirmed(35_000), flushGiven: { ul: 30_000, estimated: false } }],
  ["0\tnone\t7:15\tclear\tn\tpatient\n", { gross: { certainty: "reported", value: 0 }, leak: "none" }],
])("a reading in at most 30 keys: %j", (keys, reading) => {
  expect(keys.length).toBeLessThanOrEqual(MOST_KEYS);
  const result = readingForm.read(pressKeys(readingForm.fields(context), keys), context);
  expect(result).toMatchObject({ ok: true, entry: reading });
});
