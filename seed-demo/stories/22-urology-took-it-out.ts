import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Stent and nephrostomy on one side, and "urology took it out": which of the two was it? */
export const urologyTookItOut: Story = {
  patient: person("Umberlatch", "Cosmo", {
    number: "004747",
    birthOn: "15 jun 1959",
    telephones: "555 0120 mornings",
    livesIn: "Halifax",
  }),
  acts: [
    tube(48, "outer", { kind: "pcn l", size: "8 f", retention: "locking loop" }),
    tube(41, "inner", { kind: "jj l", size: "6 f", plan: "remove by +55 Dr Hazelbarrow" }),
    call(46, "Well."),
    call(39, "Knows of the stent."),
    act(2, {
      at: "16:10",
      by: "caller",
      form: "reported out",
      texts: {
        toldBy: "the urology ward",
        when: "?",
        note: "They took it out. The caller had gone before saying which.",
      },
    }),
  ],
};
