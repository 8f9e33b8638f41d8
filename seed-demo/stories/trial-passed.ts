import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** A trial that was passed, the removal decided and done: whole, loop released, seen. */
export const trialPassed: Story = {
  patient: person("Easelwood-Trim", "Corisande", {
    number: "004771",
    birthOn: "4 nov 1972",
    telephones: "555 0150",
  }),
  acts: [
    tube(64, "gall", { kind: "perc chole", size: "8 f", route: "transhepatic", retention: "locking loop" }),
    call(62, "Pain gone."),
    act(36, {
      form: "clamp trial started",
      tube: "gall",
      texts: { covers: "Corin Callwell", bagAtHome: "yes" },
    }),
    call(35, "No pain."),
    call(34, "No fever."),
    act(28, {
      by: "physician",
      form: "clamp trial passed",
      tube: "gall",
      texts: { mode: "capped", note: "Duct open on the cholangiogram." },
    }),
    act(28, {
      at: "10:30",
      by: "physician",
      form: "removal decided",
      tube: "gall",
      texts: { by: "+7", owner: "any physician", decidedBy: "Petra Physick" },
    }),
    act(22, {
      by: "physician",
      form: "removed",
      tube: "gall",
      texts: { whole: "yes", loopReleased: "yes", byWhom: "Petra Physick", seenHow: "under imaging" },
    }),
  ],
};
