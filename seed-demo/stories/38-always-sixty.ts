import { act, call, check, emptiedDaily, person, type Story, tube } from "#seed-demo/story.ts";

/** A segmental biliary drain that always makes 60 mL: accepted as its usual level until a day, and no daily alarm. */
export const alwaysSixty: Story = {
  patient: person("Sixpenny-Vale", "Ursula", {
    number: "004761",
    birthOn: "21 feb 1962",
    telephones: "555 0138",
  }),
  acts: [
    tube(43, "segment", {
      kind: "external biliary drain",
      side: "l",
      size: "8 f",
      cavity: "segment 3",
      retention: "locking loop",
    }),
    call(41, "Little in the bag, no fever."),
    check(28, "segment", {
      study: "cholangiogram",
      finding: "Drains segment 3 only. About 60 mL a day is what it makes.",
    }),
    act(28, {
      at: "11:40",
      by: "physician",
      form: "usual level accepted",
      tube: "segment",
      texts: {
        row: "low",
        level: "60",
        until: "+120",
        acceptedBy: "Petra Physick",
        note: "One segment alone drains through it.",
      },
    }),
    ...emptiedDaily({ from: 13, word: "segment" }, [62, 60, 58, 61, 64, 60, 59, 60, 63, 58, 60, 61, 60], {
      flushGiven: "5",
      characters: "bilious",
    }),
    call(6, "As always."),
  ],
};
