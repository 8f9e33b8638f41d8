import { call, emptied, emptiedDaily, person, type Story, tube } from "#seed-demo/story.ts";

/** A nephrostomy with nothing in the bag since last night and a patient who is well: an alarm by the hours of the row, and no sign for its removal. */
export const drySinceLastNight: Story = {
  patient: person("Tinderfleece", "Rufina", {
    number: "004732",
    birthOn: "6 dec 1971",
    telephones: "555 0102",
  }),
  acts: [
    tube(31, "left", {
      kind: "pcn l",
      size: "8 f",
      takes: ".035 in",
      retention: "locking loop",
      flushOrder: "5 mL x 1 a day",
    }),
    call(29, "Clear urine, no pain."),
    ...emptiedDaily(
      { from: 10, word: "left" },
      [1350, 1280, 1420, 1300, 1390, 1310, 1260, 1380, 1340, 1290],
      {
        flushGiven: "5",
        characters: "urine-like",
      },
    ),
    emptied(1, "left", { at: "22:00", drained: "610", flushGiven: "none", characters: "urine-like" }),
    emptied(0, "left", { at: "07:15", drained: "0", flushGiven: "none" }),
    call(0, "Feels well, no fever, passes urine by the usual way. Will look for a kink and ring back."),
  ],
};
