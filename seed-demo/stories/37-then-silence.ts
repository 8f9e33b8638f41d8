import { call, check, emptiedDaily, noAnswer, person, type Story, tube } from "#seed-demo/story.ts";

/** Two low days three weeks ago, then silence: what was met then is not met now. */
export const thenSilence: Story = {
  patient: person("Hushabell", "Anselm", { number: "004760", birthOn: "3 jun 1951", telephones: "555 0137" }),
  acts: [
    tube(36, "drain", {
      kind: "abscess drain",
      size: "8 f",
      cavity: "appendix bed",
      retention: "locking loop",
      flushOrder: "10 mL x 1 a day",
    }),
    call(34, "Well."),
    ...emptiedDaily({ from: 33, word: "drain" }, [66, 58, 44, 39, 30, 27, 24, 21, 18, 17, 17, 18], {
      flushGiven: "10",
      characters: "serous",
    }),
    check(21, "drain", { study: "sinogram", finding: "Small cavity left." }),
    noAnswer(9, "No answer."),
    noAnswer(7, "No answer in the evening either."),
  ],
};
