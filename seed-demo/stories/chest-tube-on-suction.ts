import { act, call, check, emptiedDaily, person, type Story, tube } from "#seed-demo/story.ts";

/** A chest tube, reviewed daily: from seal to suction and back to the seal. */
export const chestTubeOnSuction: Story = {
  patient: person("Airywhistle", "Dorian", {
    number: "004770",
    birthOn: "12 mar 1981",
    telephones: "555 0149",
  }),
  acts: [
    tube(5, "left", {
      kind: "chest tube",
      side: "l",
      size: "12 f",
      retention: "locking loop",
      flushOrder: "10 mL x 2 a day",
    }),
    call(4, "On the ward."),
    ...[4, 3, 2, 1].map((daysAgo) => check(daysAgo, "left", { finding: "Looked at on the ward round." })),
    act(4, {
      at: "12:00",
      form: "suction changed",
      tube: "left",
      texts: { mode: "to suction", pressure: "-15 cm of water" },
    }),
    act(2, { at: "12:00", form: "suction changed", tube: "left", texts: { mode: "underwater seal" } }),
    ...emptiedDaily({ from: 4, word: "left" }, [260, 190, 130, 95], {
      flushGiven: "2 x 10",
      characters: "serous",
    }),
  ],
};
