import { act, call, callAt, emptied, person, type Story } from "#seed-demo/story.ts";

/** Placed just before midnight and called just after: the days are those of the clinic, the moments those of the clock. */
export const roundMidnight: Story = {
  patient: person("Lullabrook-Plume", "Jasper", {
    number: "004735",
    birthOn: "4 oct 1952",
    telephones: "555 0105 not before noon",
    language: "Dutch",
    needsInterpreter: "yes",
  }),
  acts: [
    act(12, {
      at: "23:58",
      by: "physician",
      form: "placed",
      tube: "right",
      texts: { kind: "pcn r", size: "8 f", when: "today 23:40", takes: ".035 in", retention: "locking loop" },
    }),
    callAt(11, {
      at: "00:20",
      texts: { outcome: "reached a carer", note: "On the ward, comfortable.", when: "today 00:15" },
    }),
    act(11, {
      at: "00:30",
      by: "caller",
      form: "reading",
      tube: "right",
      texts: {
        from: "yesterday 23:40",
        to: "today 00:00",
        drained: "35",
        flushGiven: "none",
        characters: "bloody",
      },
    }),
    emptied(11, "right", { drained: "700", flushGiven: "none", characters: "urine-like" }),
    act(11, {
      at: "09:00",
      by: "physician",
      form: "alarm closed",
      tube: "right",
      texts: { done: "expected", by: "Petra Physick", note: "Fresh puncture, clear by the morning." },
    }),
    act(10, { form: "anchors removed", tube: "right", texts: { what: "the skin suture", fixation: "disc" } }),
    call(9, "Home from abroad, clear urine."),
  ],
};
