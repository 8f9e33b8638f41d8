import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Taken over without a date, which a letter brought a week later. */
export const datedLater: Story = {
  patient: person("Letterquay", "Leander", {
    number: "004772",
    birthOn: "27 jun 1940",
    telephones: "555 0151",
  }),
  acts: [
    tube(30, "right", {
      kind: "conduit catheter",
      side: "r",
      size: "8 f",
      when: "?",
      from: "?",
      tractSince: "?",
    }),
    call(29, "Well, does not remember."),
    act(23, { form: "clock dated", tube: "right", texts: { catheterSince: "-33", how: "discharge letter" } }),
    act(23, { at: "10:20", form: "conditions noted", texts: { conduitOrNeobladder: "yes" } }),
    act(23, { at: "10:30", form: "verified", tube: "right", texts: { how: "the letter read" } }),
    call(22, "Told the date."),
  ],
};
