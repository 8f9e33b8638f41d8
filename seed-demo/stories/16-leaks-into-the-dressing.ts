import { act, call, check, emptied, emptiedDaily, person, type Story, tube } from "#seed-demo/story.ts";

/** Low because it leaks into the dressing: the bag alone says too little. */
export const leaksIntoTheDressing: Story = {
  patient: person("Spindlehurst", "Cordula", {
    number: "004743",
    birthOn: "8 mar 1985",
    telephones: "555 0115",
  }),
  acts: [
    tube(12, "drain", {
      kind: "abscess drain",
      size: "8 f",
      cavity: "pelvic",
      retention: "locking loop",
      flushOrder: "10 mL x 2 a day",
    }),
    call(11, "Runs well."),
    ...emptiedDaily({ from: 10, word: "drain" }, [70, 66, 58, 49, 45], {
      flushGiven: "20",
      characters: "purulent",
      leak: "none",
    }),
    ...emptiedDaily({ from: 5, word: "drain" }, [24, 22], {
      flushGiven: "20",
      characters: "purulent",
      leak: "soaking",
    }),
    act(4, {
      at: "14:40",
      by: "caller",
      form: "leaking",
      tube: "drain",
      texts: { soaking: "yes", toldBy: "the patient" },
    }),
    check(3, "drain", { study: "sinogram", finding: "A side hole lay in the tract; advanced by 2 cm." }),
    act(3, {
      at: "11:40",
      by: "physician",
      form: "repositioned",
      tube: "drain",
      texts: { externalLength: "11 cm", seenHow: "under imaging" },
    }),
    emptied(2, "drain", { drained: "61", flushGiven: "20", characters: "purulent", leak: "none" }),
    emptied(1, "drain", { drained: "57", flushGiven: "20", characters: "serous", leak: "none" }),
  ],
};
