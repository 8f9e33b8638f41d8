import { call, check, person, type Story, told, tube } from "#seed-demo/story.ts";

/** A plastic stent in the bile duct and one of metal in the ureter: nothing outside, only their dates. */
export const bileDuctStent: Story = {
  patient: person("Hiddenquist", "Augustin", {
    number: "004774",
    birthOn: "23 jan 1952",
    telephones: "555 0154",
  }),
  acts: [
    tube(61, "bile", {
      kind: "biliary stent",
      size: "10 f",
      plan: "exchange by +100 Dr Hazelbarrow",
      retention: "flaps",
    }),
    tube(200, "ureter", { kind: "metal stent", side: "r", size: "6 f", retention: "two loops" }),
    told(199, "ureter"),
    call(198, "Knows of it."),
    told(60, "bile"),
    call(59, "Knows of it."),
    check(90, "ureter", { finding: "In place on the film." }),
    call(30, "No fever, no jaundice."),
  ],
};
