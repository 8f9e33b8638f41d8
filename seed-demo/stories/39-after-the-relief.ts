import { act, call, emptiedDaily, person, type Story } from "#seed-demo/story.ts";

/** From 3,500 to 600 mL on the fourth day after an obstruction was relieved: expected then. */
export const afterTheRelief: Story = {
  patient: person("Torrentine", "Caspian", {
    number: "004762",
    birthOn: "17 dec 1974",
    telephones: "555 0139",
  }),
  acts: [
    act(14, {
      at: "09:00",
      by: "physician",
      form: "placed",
      tube: "right",
      texts: {
        kind: "pcn r",
        size: "10 f",
        when: "today 08:15",
        takes: ".038 in",
        retention: "locking loop",
        indication: "obstruction by a stone",
      },
    }),
    call(12, "Drinks a lot, drains a lot."),
    ...emptiedDaily(
      { from: 13, word: "right" },
      [3300, 3500, 2100, 600, 1450, 1500, 1480, 1520, 1490, 1510, 1500, 1470],
      {
        flushGiven: "none",
        characters: "urine-like",
      },
    ),
    act(3, { form: "conditions noted", texts: { stoneFormer: "?", allergies: "contrast" } }),
    call(2, "Well, clear urine."),
  ],
};
