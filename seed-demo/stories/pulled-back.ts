import { act, person, type Story, tube } from "#seed-demo/story.ts";

/** Pulled back to the first mark at the skin. */
export const pulledBack: Story = {
  patient: person("Inkwell-Rushby", "Delphine", {
    number: "004726",
    birthOn: "8 aug 1990",
    telephones: "555 0162",
  }),
  acts: [
    tube(5, "drain", {
      kind: "abscess drain",
      size: "10 f",
      cavity: "perihepatic",
      externalLength: "12 cm",
      retention: "locking loop",
    }),
    act(1, {
      at: "18:10",
      by: "caller",
      form: "partly dislodged",
      tube: "drain",
      texts: { when: "today", externalLength: "16 cm" },
    }),
  ],
};
