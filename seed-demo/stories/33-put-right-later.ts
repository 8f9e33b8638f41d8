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
    call(128, "Well."),
    act(52, { form: "exchanged", tube: "left", entry: "exchange", texts: { when: "today" } }),
    correct(50, {
      form: "amended",
      of: "exchange",
      texts: { when: "-3", amendedBecause: "Typed a day late: it was the day before." },
    }),
    act(49, {
      at: "14:00",
      by: "caller",
      form: "leaking",
      tube: "left",
      entry: "leak",
      texts: { soaking: "no", note: "Wet at the hub since the morning." },
    }),
    correct(49, {
      at: "15:00",
      by: "caller",
      form: "voided",
      of: "leak",
      texts: { reason: "Somebody else told it.", wrongPatient: "yes" },
    }),
    call(49, "Well since the exchange."),
  ],
};
