import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Handed over and not accepted yet: it is still this clinic's, with all its dates. */
export const handedOver: Story = {
  patient: person("Ferrybundle", "Odette", {
    number: "004767",
    birthOn: "8 oct 1944",
    telephones: "555 0146",
  }),
  acts: [
    tube(37, "bladder", { kind: "spc", size: "16 f", retention: "balloon", balloon: "10" }),
    call(35, "Well."),
    ...[20, 13, 6].map((daysAgo) =>
      act(daysAgo, { form: "balloon checked", tube: "bladder", texts: { found: "10", refilled: "10" } }),
    ),
    act(4, { form: "handed over", tube: "bladder", texts: { to: "the nursing home in Fernhollow" } }),
  ],
};
