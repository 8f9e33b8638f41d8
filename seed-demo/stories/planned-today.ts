import { act, call, person, type Story, tube, visit } from "#seed-demo/story.ts";

/** An exchange planned for today with a wire that the package of the tube in place does not promise to take. */
export const plannedToday: Story = {
  patient: person("Mossgate", "Perrin", { number: "004712", birthOn: "19 nov 1960", telephones: "555 0122" }),
  acts: [
    tube(77, "left", {
      kind: "nephrostomy",
      side: "left",
      size: "8 f",
      takes: ".035 in",
      retention: "locking loop",
      bores: "hub 2.0 mm, shaft 1.9 mm, end hole .035 in",
    }),
    call(75, "Knows the date of the exchange."),
    visit(6, {
      at: "10:10",
      form: "visit booked",
      visit: "today",
      tubes: [["left", "exchange"]],
      inDays: 6,
      texts: {},
    }),
    visit(2, { form: "visit noted", visit: "today", state: "confirmed", texts: { by: "the patient" } }),
    act(6, {
      form: "exchange planned",
      tube: "left",
      texts: { on: "+6", wire: ".038 in", size: "10 f", takes: ".038 in", reason: "2" },
    }),
  ],
};
