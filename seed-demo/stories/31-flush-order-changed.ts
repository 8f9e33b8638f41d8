import { act, call, emptied, emptiedDaily, person, type Story, tube } from "#seed-demo/story.ts";

/** The flush order changed half way: what was given is subtracted, whatever was ordered. */
export const flushOrderChanged: Story = {
  patient: person("Saffronlock", "Emeric", {
    number: "004755",
    birthOn: "28 aug 1960",
    telephones: "555 0130",
  }),
  acts: [
    tube(13, "drain", {
      kind: "abscess drain",
      size: "10 f",
      cavity: "perirenal, left",
      retention: "locking loop",
      flushOrder: "10 mL x 3 a day",
    }),
    call(12, "Flushes three times."),
    ...emptiedDaily({ from: 12, word: "drain" }, [110, 104, 92, 88, 81], {
      flushGiven: "3 x 10",
      characters: "purulent",
    }),
    act(8, {
      at: "12:00",
      by: "physician",
      form: "facts noted",
      tube: "drain",
      texts: { flushOrder: "5 mL x 1 a day" },
    }),
    emptied(7, "drain", { drained: "62", flushGiven: "3 x 10", characters: "serous" }),
    call(7, "Had not heard of the new order. Now has."),
    ...emptiedDaily({ from: 6, word: "drain" }, [38, 33, 30, 27, 25, 22], {
      flushGiven: "5",
      characters: "serous",
    }),
  ],
};
