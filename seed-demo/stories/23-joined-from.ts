import { call, person, type Story, tube } from "#seed-demo/story.ts";

/** The same person under the number of another hospital, until both records were joined. */
export const joinedFrom: Story = {
  patient: person("Tallowmere", "Wilmot", {
    number: "F-3120",
    issuer: "Fernhollow",
    birthOn: "28 sep 1969",
    telephones: "555 0185",
  }),
  acts: [
    tube(57, "stent", { kind: "jj r", size: "6 f", plan: "remove by +70 Dr Hazelbarrow" }),
    call(55, "Knows of the stent."),
  ],
};
