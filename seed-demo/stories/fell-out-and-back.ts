import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Fell out twice: put back through its own tract the first time, left out by decision the second. */
export const fellOutAndBack: Story = {
  patient: person("Boomerwhite", "Sylvan", {
    number: "004768",
    birthOn: "2 jul 1967",
    telephones: "555 0147",
  }),
  acts: [
    tube(150, "left", { kind: "pcn l", size: "10 f", takes: ".038 in", retention: "locking loop" }),
    call(148, "Well."),
    act(75, { form: "downsized", tube: "left", texts: { when: "today", size: "8 f" } }),
    call(73, "More comfortable."),
    act(52, {
      at: "08:20",
      by: "caller",
      form: "fell out",
      tube: "left",
      texts: { when: "today 06:30", whole: "yes", toldBy: "the patient" },
    }),
    act(52, {
      at: "13:00",
      by: "physician",
      form: "salvaged",
      tube: "left",
      texts: { when: "today 12:10", size: "8 f" },
    }),
    call(50, "Well."),
    act(15, {
      at: "09:00",
      form: "fell out",
      tube: "left",
      texts: { when: "-1", whole: "yes", toldBy: "the patient" },
    }),
    act(15, {
      at: "16:00",
      by: "physician",
      form: "not replaced",
      tube: "left",
      texts: { decidedBy: "Petra Physick", reason: "No obstruction any more on imaging." },
    }),
  ],
};
