import { act, call, emptiedDaily, person, type Story, tube } from "#seed-demo/story.ts";

/** An upsize planned through a young tract: if access is lost, this becomes a new puncture. */
export const earlyUpsize: Story = {
  patient: person("Pewterspring", "Hyacinth", {
    number: "004754",
    birthOn: "7 jun 1982",
    telephones: "555 0129",
  }),
  acts: [
    act(7, { form: "conditions noted", texts: { steroids: "yes", diabetes: "yes", bloodThinners: "none" } }),
    tube(6, "pancreas", {
      kind: "pancreatic drain",
      size: "12 f",
      cavity: "lesser sac",
      takes: ".038 in",
      retention: "locking loop",
      flushOrder: "20 mL x 3 a day",
    }),
    call(5, "Thick fluid, flushes hard."),
    act(4, { form: "flushed", tube: "pancreas", texts: { went: "hard", given: "20", cameBack: "yes" } }),
    ...emptiedDaily({ from: 4, word: "pancreas" }, [190, 170, 150, 160], {
      flushGiven: "3 x 20",
      characters: "purulent, debris",
    }),
    act(1, {
      by: "physician",
      form: "exchange planned",
      tube: "pancreas",
      texts: { on: "+3", wire: ".038 in", size: "16 f", takes: ".038 in" },
    }),
  ],
};
