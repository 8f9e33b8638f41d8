import { act, call, emptied, person, type Story } from "#seed-demo/story.ts";

/** An abscess drain whose output falls, with a gap and an upsize: the net days tell which of them are complete. */
export const upsizedAfterLowDays: Story = {
  patient: person("Fennimoor", "Tabitha", {
    number: "004721",
    birthOn: "16 jul 1983",
    telephones: "555 0112",
  }),
  acts: [
    act(12, {
      at: "11:00",
      form: "placed",
      tube: "abscess",
      texts: {
        kind: "abscess drain",
        size: "8 f",
        when: "today 10:30",
        cavity: "left subphrenic",
        takes: ".035 in",
        retention: "locking loop",
        flushOrder: "10 mL x 2 a day",
      },
    }),
    call(11, "No fever, flushes easily."),
    emptied(11, "abscess", { drained: "88", flushGiven: "10", characters: "purulent" }),
    emptied(10, "abscess", { drained: "95", flushGiven: "20", characters: "purulent" }),
    emptied(9, "abscess", { drained: "80", flushGiven: "20", characters: "purulent" }),
    act(8, {
      at: "13:00",
      form: "upsized",
      tube: "abscess",
      texts: { when: "today 12:30", size: "12 f", takes: ".038 in" },
    }),
    emptied(8, "abscess", { at: "12:30", drained: "50", flushGiven: "10", characters: "purulent" }),
    call(7, "Better since the larger tube."),
    emptied(7, "abscess", { drained: "72", flushGiven: "20", characters: "serous, purulent" }),
    emptied(6, "abscess", { drained: "54", flushGiven: "20", characters: "serous" }),
    emptied(4, "abscess", { drained: "62", flushGiven: "?", characters: "serous" }),
    emptied(3, "abscess", { drained: "27", flushGiven: "20", characters: "serous" }),
    emptied(2, "abscess", { drained: "26", flushGiven: "20", characters: "serous" }),
    emptied(1, "abscess", { drained: "20", flushGiven: "30", characters: "serous" }),
    emptied(0, "abscess", { at: "07:30", drained: "24", flushGiven: "20", characters: "serous" }),
  ],
};
