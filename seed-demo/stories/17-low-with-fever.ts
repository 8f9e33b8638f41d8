import { act, call, emptiedDaily, flag, person, type Story, tube } from "#seed-demo/story.ts";

/** Low, and feverish: the numbers are one part of it, and the patient is the other. */
export const lowWithFever: Story = {
  patient: person("Ravelstook", "Peregrine", {
    number: "004744",
    birthOn: "16 jan 1968",
    telephones: "555 0116",
  }),
  acts: [
    tube(13, "drain", {
      kind: "abscess drain",
      size: "10 f",
      cavity: "right subphrenic",
      retention: "locking loop",
      flushOrder: "10 mL x 2 a day",
    }),
    call(12, "Better already."),
    ...emptiedDaily({ from: 9, word: "drain" }, [64, 55, 43, 38, 31, 27, 25, 24, 24], {
      flushGiven: "20",
      characters: "purulent",
    }),
    act(0, {
      at: "08:20",
      by: "caller",
      form: "infected",
      tube: "drain",
      texts: {
        fever: "yes",
        toldBy: "the patient",
        note: "Petra Physick told by telephone.",
      },
    }),
    flag(0, {
      at: "08:22",
      by: "caller",
      texts: { row: "fever", of: "1", toldBy: "the patient", when: "08:20", handedTo: "Petra Physick" },
    }),
    act(0, {
      at: "08:25",
      by: "caller",
      form: "clinical state noted",
      texts: {
        temperature: "101.5 F",
        chills: "no",
        feels: "unwell",
        imaging: "unchanged",
        imagingOn: "-2",
        toldBy: "the patient",
        when: "yesterday 22:00",
      },
    }),
  ],
};
