import { act, call, check, emptied, emptiedDaily, person, type Story, tube } from "#seed-demo/story.ts";

/** A capped internal-external drain with an empty bag: neither blocked nor ready to come out. */
export const cappedBagEmpty: Story = {
  patient: person("Bellowquist", "Clemency", {
    number: "004731",
    birthOn: "18 feb 1949",
    telephones: "555 0101",
  }),
  acts: [
    tube(38, "bile", { kind: "iebd", side: "r", size: "10 f", takes: ".035 in", retention: "locking loop" }),
    call(36, "No fever, bile in the bag."),
    ...emptiedDaily({ from: 24, word: "bile" }, [420, 390, 405], {
      flushGiven: "2 x 5",
      characters: "bilious",
    }),
    check(21, "bile", { study: "cholangiogram", finding: "Contrast runs into the duodenum." }),
    act(21, {
      at: "13:00",
      form: "capped",
      tube: "bile",
      texts: { when: "today 12:00", covers: "Corin Callwell", bagAtHome: "yes" },
    }),
    call(20, "Capped, no pain, bag empty as it should be."),
    call(14, "Capped for a week, stools brown."),
    emptied(7, "bile", { drained: "0", flushGiven: "2 x 5" }),
  ],
};
