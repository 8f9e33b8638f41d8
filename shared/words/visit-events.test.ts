import { describe, expect, it } from "vitest";
import { visitPayloads } from "#shared/tube/visit-payloads.ts";
import type { Entry } from "#tests/support/factories.ts";
import { here, visitBooked, visitMoved, visitNoted, visitPrepared } from "#tests/support/visit-factories.ts";
import { storySentence } from "./events.ts";

const told: readonly (readonly [Entry, string])[] = [
  [visitBooked(), "Visit booked: tube 1 exchange, Wed 4 Nov 2026, 09:30, 30 min."],
  [
    visitBooked({
      state: "proposed",
      urgent: true,
      tubes: [
        { tubeId: "tube-1", act: "exchange" },
        { tubeId: "tube-2", act: "removal" },
      ],
      note: "By letter.",
    }),
    "Visit proposed: tube 1 exchange and tube 2 removal, Wed 4 Nov 2026, 09:30, 30 min, urgent. By letter.",
  ],
  [
    visitBooked({
      place: { kind: "elsewhere", where: "Far Dale General", from: 600 },
      visitOn: "2026-11-14",
    }),
    "Visit booked elsewhere: tube 1 exchange, Sat 14 Nov 2026, 10:00, at Far Dale General.",
  ],
  [
    visitBooked({ place: { kind: "elsewhere", where: "Far Dale General", from: null } }),
    "Visit booked elsewhere: tube 1 exchange, Wed 4 Nov 2026, at Far Dale General.",
  ],
  [
    visitMoved({ place: here("14:00", 45), by: "the ward", reason: "A theatre list." }),
    "Visit moved: to Thu 5 Nov 2026, 14:00, 45 min, asked by the ward. A theatre list.",
  ],
  [visitNoted({ by: "the patient" }), "Visit confirmed: by the patient."],
  [visitNoted({ state: "arrived" }), "Arrived for the visit."],
  [visitNoted({ state: "did not attend", reason: "No transport." }), "Did not attend. No transport."],
  [visitNoted({ state: "cancelled", by: "the clinic" }), "Visit cancelled: by the clinic."],
  [
    visitPrepared({ thing: "labs", by: "Dr Example", says: "INR 1.2." }),
    "Before the visit: labs: settled, by Dr Example. INR 1.2.",
  ],
];

describe("a visit in the story", () => {
  it.each(told)("%j", ({ kind, payload }, sentence) => {
    expect(storySentence({ kind, payload }, (id) => id)).toBe(sentence);
  });

  it("has an example of each kind", () => {
    expect(new Set<string>(told.map(([{ kind }]) => kind))).toEqual(new Set(Object.keys(visitPayloads)));
  });
});
