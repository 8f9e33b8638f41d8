import { call, person, type Story, tube, visit } from "#seed-demo/story.ts";

/** Two nephrostomies in one visit: booked, moved for dialysis, prepared in part, confirmed. */
export const visitMovedAndConfirmed: Story = {
  patient: person("Fennelworth", "Cuthbert", {
    number: "004792",
    birthOn: "2 may 1948",
    telephones: "555 0157",
    language: "Welsh",
    needsInterpreter: "yes",
  }),
  acts: [
    tube(70, "left", { kind: "pcn l", size: "8 f", takes: ".035 in", retention: "locking loop" }),
    tube(64, "right", { kind: "pcn r", size: "8 f", takes: ".035 in", retention: "locking loop" }),
    call(62, "Both draining."),
    visit(9, {
      form: "visit booked",
      visit: "both",
      tubes: [
        ["left", "exchange"],
        ["right", "exchange"],
      ],
      inDays: 12,
      texts: { held: "proposed", notOn: "tue thu" },
    }),
    visit(6, {
      form: "visit moved",
      visit: "both",
      inDays: 12,
      texts: { by: "the daughter", reason: "She drives, and works that day." },
    }),
    visit(4, {
      form: "visit prepared",
      visit: "both",
      texts: {
        "blood-thinners": "settled: none taken, told by the daughter",
        "signed-order": "settled",
        interpreter: "settled: booked for the day",
        escort: "settled: the daughter",
        "pregnancy-test": "does not apply",
      },
    }),
    visit(3, { form: "visit noted", visit: "both", state: "booked", texts: { by: "the daughter" } }),
    visit(1, { form: "visit noted", visit: "both", state: "confirmed", texts: { by: "the daughter" } }),
  ],
};
