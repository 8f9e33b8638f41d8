import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Exchanged in another hospital at night: reported, size unknown until seen. */
export const exchangedElsewhere: Story = {
  patient: person("Lanternby", "Crispin", {
    number: "004715",
    birthOn: "30 aug 1948",
    telephones: "555 0152",
    language: "Welsh",
    needsInterpreter: "yes",
  }),
  acts: [
    tube(120, "transplant", { kind: "nephrostomy", side: "tx", size: "8 f", retention: "locking loop" }),
    act(119, { form: "conditions noted", texts: { transplantKidney: "yes", singleKidney: "yes" } }),
    call(117, "Well."),
    act(9, {
      form: "exchanged",
      tube: "transplant",
      texts: { when: "-2", elsewhere: "the hospital in Fernhollow" },
    }),
  ],
};
