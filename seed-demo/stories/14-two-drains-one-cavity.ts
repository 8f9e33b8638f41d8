import { act, call, emptiedDaily, person, type Story, tube } from "#seed-demo/story.ts";

/** Two drains in one cavity, 8 mL each: either alone would look ready, the sum does not. */
export const twoDrainsOneCavity: Story = {
  patient: person("Marrowthimble", "Lucasta", {
    number: "004741",
    birthOn: "11 aug 1979",
    telephones: "555 0113",
  }),
  acts: [
    tube(11, "upper", {
      kind: "abscess drain",
      size: "10 f",
      cavity: "left paracolic",
      retention: "locking loop",
      flushOrder: "none",
    }),
    tube(11, "lower", {
      kind: "abscess drain",
      size: "12 f",
      cavity: "left paracolic",
      retention: "locking loop",
      flushOrder: "none",
    }),
    call(10, "Both drain."),
    call(10, "Both drain."),
    ...emptiedDaily({ from: 9, word: "upper" }, [30, 26, 22, 17, 13, 9, 8, 8, 8, 8], {
      characters: "serous",
      flushGiven: "none",
    }),
    act(0, {
      at: "09:20",
      form: "clinical state noted",
      texts: { temperature: "36.7", chills: "no", feels: "well", whiteCells: "8.1", crp: "14" },
    }),
    ...emptiedDaily({ from: 9, word: "lower" }, [34, 31, 22, 15, 14, 10, 8, 8, 8, 8], {
      characters: "serous",
      flushGiven: "none",
    }),
  ],
};
