import { act, callAt, noAnswer, person, type Story, tube } from "#seed-demo/story.ts";

/** Three attempts, whom the patient named, a letter, the doctors: nobody is reached, and a physician decides that the calls go on. */
export const notReached: Story = {
  ownCalls: true,
  patient: person("Thistlewake", "Barnaby", {
    birthOn: "9 feb 1955",
    number: "004991",
    alternateName: "Ada Thistlewake, sister",
    alternateMayBeTold: "yes",
    familyDoctor: "Dr. Invented, Nettle Lane",
  }),
  acts: [
    tube(26, "left", { kind: "pcn l", size: "8 f", takes: ".035 in", retention: "locking loop" }),
    noAnswer(25, "Rang out."),
    callAt(24, { at: "14:10", texts: { outcome: "voicemail", note: "Asked to ring back." } }),
    callAt(21, { at: "17:30", texts: { outcome: "no answer" } }),
    callAt(20, { at: "11:00", texts: { to: "the alternate contact", outcome: "no answer" } }),
    act(19, { by: "caller", form: "letter sent", texts: { to: "the patient", when: "today" } }),
    act(12, {
      by: "caller",
      form: "letter sent",
      texts: { to: "the referrer and the family doctor", when: "today", note: "Both asked where he is." },
    }),
    act(5, {
      by: "physician",
      form: "not reached decided",
      texts: { again: "+4", decidedBy: "Petra Physick", reason: "He is said to travel; ring again." },
    }),
  ],
};
