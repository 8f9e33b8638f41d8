import { act, call, person, type Story, told, tube } from "#seed-demo/story.ts";

/** A stent with its date, and a second one on the other side that has come out. */
export const twoStents: Story = {
  patient: person("Saltmarrow", "Horatio", {
    number: "004724",
    birthOn: "1 jan 1977",
    telephones: "555 0141 evenings",
  }),
  acts: [
    tube(50, "right", { kind: "stent r", size: "7 f", plan: "remove by +70 Dr Hazelbarrow" }),
    told(50, "right"),
    call(48, "Knows that a stent is inside and when it comes out."),
    tube(50, "left", { kind: "stent l", size: "7 f", plan: "remove by +28" }),
    act(21, {
      form: "removed",
      tube: "left",
      texts: {
        whole: "yes",
        loopReleased: "yes",
        when: "today",
        byWhom: "Dr Hazelbarrow",
        seenHow: "cystoscopy",
      },
    }),
  ],
};
