import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** A piece that stays by a clinician's decision, which ends the record. */
export const fragmentLeftIn: Story = {
  patient: person("Puddlestone", "Evander", {
    number: "004776",
    birthOn: "11 jul 1948",
    telephones: "555 0187",
  }),
  acts: [
    tube(96, "left", { kind: "pcn l", size: "8 f", retention: "locking loop" }),
    call(94, "Well."),
    act(30, {
      by: "physician",
      form: "broken",
      tube: "left",
      texts: { fragmentInside: "yes", part: "two millimeters of the string", note: "Seen under imaging." },
    }),
    act(29, {
      by: "physician",
      form: "removed",
      tube: "left",
      texts: { when: "today", whole: "no", loopReleased: "yes", byWhom: "Petra Physick" },
    }),
    act(12, {
      by: "physician",
      form: "follow-up ended",
      tube: "left",
      texts: {
        decidedBy: "Petra Physick",
        reason: "The piece stays: no symptoms, and the patient agrees.",
        when: "today",
      },
    }),
  ],
};
