import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Left out of step with right: two tubes, two clocks; the left is past its latest date. */
export const twoClocks: Story = {
  patient: person("Brackenfold", "Ottoline", {
    number: "004711",
    birthOn: "3 apr 1951",
    telephones: "555 0117 after 5 pm",
  }),
  acts: [
    tube(190, "left", {
      kind: "pcn l",
      size: "8 f",
      takes: ".035 in",
      retention: "locking loop",
      cancerObstruction: "yes",
    }),
    tube(150, "right", { kind: "pcn r", size: "8 f", takes: ".038 in", retention: "locking loop" }),
    call(148, "Draining well, dressing dry."),
    act(98, { form: "exchanged", tube: "left", texts: { when: "today" } }),
    call(96, "No pain, clear urine."),
    act(70, { form: "exchanged", tube: "right", texts: { when: "today", size: "10 f", takes: ".038 in" } }),
    call(69, "Well."),
    act(30, {
      form: "checked",
      tube: "left",
      texts: {
        when: "today",
        finding: "Loop in the renal pelvis.",
        study: "nephrostogram",
        concerns: "hard to flush",
      },
    }),
  ],
};
