import { act, call, emptiedDaily, person, type Story, tube } from "#seed-demo/story.ts";

/** A drain that hardly drains any more: a review was asked for, and what was decided in it is half done. */
export const reviewedAndDecided: Story = {
  patient: person("Wickerley-Foss", "Ambrosine", {
    number: "004902",
    birthOn: "19 sep 1966",
    telephones: "555 0192",
  }),
  acts: [
    tube(15, "drain", {
      kind: "abscess drain",
      size: "10 f",
      cavity: "left flank",
      retention: "locking loop",
      flushOrder: "10 mL x 2 a day",
    }),
    call(13, "Well, flushes easily."),
    ...emptiedDaily({ from: 12, word: "drain" }, [71, 64, 52, 40, 33, 26, 22, 21], {
      flushGiven: "20",
      characters: "serous",
    }),
    act(5, {
      at: "14:40",
      by: "caller",
      form: "review asked",
      tube: "drain",
      texts: { by: "+1", reason: "Hardly anything but the flush.", askedBy: "the home nurse" },
    }),
    act(4, {
      at: "12:10",
      by: "physician",
      form: "review decided",
      tube: "drain",
      texts: {
        what: "imaging",
        by: "+2",
        owner: "any nurse",
        words: "Is the cavity gone, or is the drain blocked? The film before anything else.",
        decidedBy: "Petra Physick",
        what2: "leave in",
        by2: "+6",
        owner2: "any physician",
        what3: "refer",
        by3: "+9",
        owner3: "any nurse",
      },
    }),
    act(2, {
      at: "15:30",
      form: "decision done",
      tube: "drain",
      texts: { what: "imaging", how: "Done today, report to follow." },
    }),
  ],
};
