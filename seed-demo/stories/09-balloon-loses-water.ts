import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Found less each week and refilled to 10: the loss counts from the last fill, and speaks before the tube falls out. */
export const balloonLosesWater: Story = {
  patient: person("Puddlethrift", "Eulalia", {
    number: "004736",
    birthOn: "12 may 1946",
    telephones: "555 0106",
  }),
  acts: [
    tube(44, "stomach", { kind: "balloon gastrostomy", size: "18 f", balloon: "10", retention: "balloon" }),
    call(42, "First feed went well."),
    act(32, { form: "anchors removed", tube: "stomach", texts: { what: "3 anchors", fixation: "disc" } }),
    ...(
      [
        [29, "9.8"],
        [22, "9.6"],
        [15, "9.7"],
        [8, "8.9"],
        [1, "8"],
      ] as const
    ).map(([daysAgo, found]) =>
      act(daysAgo, { form: "balloon checked", tube: "stomach", texts: { found, refilled: "10" } }),
    ),
  ],
};
