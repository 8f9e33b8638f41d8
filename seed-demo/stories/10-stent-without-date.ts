import { person, type Story, tube } from "#seed-demo/story.ts";

/** A stent without an operator's date: due now, and past the ceiling soon. */
export const stentWithoutDate: Story = {
  patient: person("Tumbleweir", "Sybella", {
    number: "004723",
    birthOn: "25 may 1955",
    telephones: "555 0133",
  }),
  acts: [tube(3, "left", { kind: "jj l", size: "6 f", when: "-81", from: "urology, Fernhollow" })],
};
