import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Died with the tube in place: no step is left, and it can be undone. */
export const died: Story = {
  patient: person("Hollowmere", "Winifred", {
    number: "004727",
    birthOn: "11 nov 1938",
    telephones: "555 0170",
  }),
  acts: [
    tube(60, "right", { kind: "pcn r", size: "8 f" }),
    call(58, "Comfortable at home."),
    act(13, { form: "died", texts: { when: "today", toldBy: "the family doctor" } }),
  ],
};
