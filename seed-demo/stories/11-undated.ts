import { person, type Story, tube } from "#seed-demo/story.ts";

/** Taken over from elsewhere: nobody knows since when. */
export const undated: Story = {
  patient: person("Wrenhollow", "Barnaby", { number: "004717", birthOn: "?", telephones: "555 0171" }),
  acts: [tube(4, "right", { kind: "pcn r", size: "?", when: "?", from: "a hospital abroad" })],
};
