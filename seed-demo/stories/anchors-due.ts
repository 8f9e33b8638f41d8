import { call, person, type Story, tube } from "#seed-demo/story.ts";

/** A gastrostomy whose anchors are due out, and nobody has taken them out yet. */
export const anchorsDue: Story = {
  patient: person("Bramblethwaite", "Ottoline", { number: "004793", birthOn: "8 aug 1952" }),
  acts: [
    tube(11, "stomach", {
      kind: "loop gastrostomy",
      size: "14 f",
      retention: "locking loop",
      fixation: "3 anchors, disc",
    }),
    call(9, "Fed from the second day, site dry."),
  ],
};
