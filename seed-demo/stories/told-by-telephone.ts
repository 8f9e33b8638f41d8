import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Out by telephone: told, not seen. */
export const toldByTelephone: Story = {
  patient: person("Candlewhit", "Mervyn", {
    number: "004725",
    birthOn: "14 sep 1944",
    telephones: "555 0155",
  }),
  acts: [
    tube(35, "drain", {
      kind: "abscess drain",
      size: "8 f",
      cavity: "right lower quadrant",
      retention: "locking loop",
    }),
    call(33, "Well."),
    act(3, { form: "removed", tube: "drain", texts: { whole: "?", when: "-1", toldBy: "the home nurse" } }),
  ],
};
