import { act, call, emptied, person, type Story } from "#seed-demo/story.ts";

/** 35 mL with 3 x 10 of flush is 5; 20 with 30 is -10 and stands; one figure came net already. */
export const flushDoesNotComeBack: Story = {
  patient: person("Gudgeonby", "Alaric", {
    number: "004733",
    birthOn: "23 mar 1958",
    telephones: "555 0103",
  }),
  acts: [
    act(9, {
      at: "11:00",
      form: "placed",
      tube: "drain",
      texts: {
        kind: "abscess drain",
        size: "10 f",
        when: "today 10:30",
        cavity: "left psoas",
        retention: "locking loop",
        flushOrder: "10 mL x 3 a day",
      },
    }),
    call(8, "Flushes it three times a day."),
    emptied(8, "drain", { drained: "75", flushGiven: "2 x 10", characters: "purulent" }),
    emptied(7, "drain", { drained: "61", flushGiven: "3 x 10", characters: "purulent" }),
    emptied(6, "drain", { drained: "52", flushGiven: "3 x 10", characters: "serous" }),
    emptied(5, "drain", {
      drained: "14",
      basis: "already net",
      reportedBy: "the home nurse",
      characters: "serous",
    }),
    emptied(4, "drain", { drained: "35", flushGiven: "3 x 10", characters: "serous" }),
    emptied(3, "drain", { drained: "20", flushGiven: "30", characters: "serous" }),
    act(2, { form: "flushed", tube: "drain", texts: { went: "easily", given: "10", cameBack: "no" } }),
    call(2, "Flush goes in and does not come back. Sinogram asked for."),
  ],
};
