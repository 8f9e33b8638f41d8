import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** A stone former: the shorter row wins, with its reason. */
export const stoneFormer: Story = {
  patient: person("Thistlewick", "Amabel", {
    number: "004713",
    birthOn: "7 feb 1972",
    telephones: "555 0131 mornings",
  }),
  acts: [
    act(45, { form: "conditions noted", texts: { stoneFormer: "yes" } }),
    tube(44, "right", { kind: "pcn", side: "r", size: "8.5 f", retention: "locking loop" }),
    call(42, "A little blood on day one, clear since."),
  ],
};
