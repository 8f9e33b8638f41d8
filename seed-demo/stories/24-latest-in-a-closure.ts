import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Placed 42 days ago: its latest date, in 48, lies in the two weeks in which the clinic is shut, and is pulled forward. */
export const latestInAClosure: Story = {
  patient: person("Larkwhistle", "Tobias", {
    number: "004781",
    birthOn: "30 jan 1955",
    telephones: "555 0199",
  }),
  acts: [
    tube(42, "left", { kind: "pcn l", size: "8 f", takes: ".038 in", retention: "locking loop" }),
    call(40, "Bag at home, knows whom to ring."),
    act(14, { form: "checked", tube: "left", texts: { finding: "Flushes and comes back." } }),
  ],
};
