import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Fell out this morning and nobody has decided yet. */
export const fellOutToday: Story = {
  patient: person("Pebblecroft", "Ignatia", {
    number: "004716",
    birthOn: "21 dec 1957",
    telephones: "555 0160",
  }),
  acts: [
    tube(9, "left", { kind: "pcn l", size: "8 f", retention: "locking loop" }),
    call(7, "Draining, a little sore."),
    act(0, {
      at: "07:40",
      by: "caller",
      form: "fell out",
      tube: "left",
      texts: { when: "today", whole: "yes", note: "Found in the bed. Patient well." },
    }),
  ],
};
