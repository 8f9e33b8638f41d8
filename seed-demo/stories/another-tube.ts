import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** A tube that is none of the kinds: its role and mode were asked, its date is the operator's. */
export const anotherTube: Story = {
  patient: person("Oddmentry", "Wilhelmina", {
    number: "004773",
    birthOn: "19 apr 1978",
    telephones: "555 0153",
  }),
  acts: [
    tube(19, "cyst", {
      kind: "other",
      size: "7 f",
      role: "collection",
      mode: "to bag",
      cavity: "a cyst of the spleen",
      plan: "remove by +33 Dr Hazelbarrow",
    }),
    call(17, "Little comes."),
    act(10, {
      form: "facts noted",
      tube: "cyst",
      texts: { fixation: "suture", flushOrder: "5 mL x 1 a day" },
    }),
    act(8, { form: "flushed", tube: "cyst", texts: { went: "easily", given: "5", cameBack: "yes" } }),
    call(6, "Well."),
  ],
};
