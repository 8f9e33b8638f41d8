import { act, call, emptiedDaily, person, type Story } from "#seed-demo/story.ts";

/** 600 mL drawn off at placement sit in the first bag: tagged as the procedure's, and in no trend. */
export const firstBag: Story = {
  patient: person("Basinthwick", "Leocadia", {
    number: "004752",
    birthOn: "13 jul 1975",
    telephones: "555 0127",
  }),
  acts: [
    act(11, {
      at: "12:00",
      by: "physician",
      form: "placed",
      tube: "lymph",
      texts: {
        kind: "lymphocele",
        size: "10 f",
        when: "today 11:00",
        cavity: "right pelvic lymphocele",
        retention: "locking loop",
        flushOrder: "none",
      },
    }),
    act(11, {
      at: "12:10",
      form: "reading",
      tube: "lymph",
      texts: {
        from: "today 11:00",
        to: "today 11:30",
        drained: "600",
        flushGiven: "none",
        procedureAspirate: "yes",
        characters: "serous",
      },
    }),
    call(10, "Tight feeling gone."),
    ...emptiedDaily({ from: 10, word: "lymph" }, [160, 140, 120, 100, 90, 78, 70, 61, 55, 48], {
      flushGiven: "none",
      characters: "serous",
    }),
    call(4, "Less each day."),
  ],
};
