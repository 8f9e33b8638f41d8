import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Pregnant: earlier still; the physician has the exchange by name. */
export const pregnant: Story = {
  patient: person("Quillfeather", "Rosamund", {
    number: "004714",
    birthOn: "12 jun 1995",
    telephones: "555 0140",
  }),
  acts: [
    act(20, { form: "conditions noted", texts: { pregnancy: "yes" } }),
    tube(20, "right", { kind: "pcn r", size: "8 f", takes: ".035 in", retention: "locking loop" }),
    call(18, "Well, afebrile."),
  ],
};
