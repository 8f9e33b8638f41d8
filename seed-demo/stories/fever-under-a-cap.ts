import { act, call, callAt, flagDone, person, type Story, tube } from "#seed-demo/story.ts";

/** A capped trial, a fever told in a call, handed to a named person and closed with what was done. */
export const feverUnderACap: Story = {
  ownCalls: true,
  patient: person("Oddfellow-Quay", "Prudence", { birthOn: "2 jul 1949", number: "004992" }),
  acts: [
    tube(60, "bile", { kind: "int-ext biliary", side: "right", size: "10 f", takes: ".038 in", retention: "locking loop" }),
    call(58, "Well."),
    act(9, {
      by: "physician",
      form: "capped",
      tube: "bile",
      texts: { covers: "the ward", bagAtHome: "yes", when: "today" },
    }),
    callAt(8, { at: "10:10", texts: { outcome: "reached the patient", note: "Well with the cap." } }),
    callAt(7, {
      at: "10:05",
      texts: { outcome: "reached the patient", "ask-fever": "yes", handedTo: "Petra Physick" },
    }),
    flagDone(7, {
      at: "11:30",
      by: "physician",
      texts: { by: "Petra Physick", what: "Uncapped to bag, seen the same day." },
    }),
    act(7, { at: "12:00", by: "physician", form: "uncapped", tube: "bile", texts: { when: "today" } }),
  ],
};
