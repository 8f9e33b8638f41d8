import { act, call, correct, person, type Story, tube } from "#seed-demo/story.ts";

/** Past entries put right: an exchange on another day than was typed, and a call that was of another patient. */
export const putRightLater: Story = {
  patient: person("Inkleford-Moss", "Basilia", {
    number: "004757",
    birthOn: "24 dec 1955",
    telephones: "555 0134",
  }),
  acts: [
    tube(130, "left", { kind: "nuc", side: "l", size: "8.5 f", takes: ".035 in", retention: "two loops" }),
    call(128, "left", "Well."),
    act(52, { form: "exchanged", tube: "left", entry: "exchange", texts: { when: "today" } }),
    correct(50, {
      form: "amended",
      of: "exchange",
      texts: { when: "-3", amendedBecause: "Typed a day late: it was the day before." },
    }),
    act(49, {
      at: "14:00",
      by: "caller",
      form: "called",
      tube: "left",
      entry: "call",
      texts: { outcome: "reached the patient", note: "Asks about another appointment." },
    }),
    correct(49, {
      at: "15:00",
      by: "caller",
      form: "voided",
      of: "call",
      texts: { reason: "It was a call with somebody else.", wrongPatient: "yes" },
    }),
    call(49, "left", "Well since the exchange."),
  ],
};
