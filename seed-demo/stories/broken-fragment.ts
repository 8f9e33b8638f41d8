import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Broke on removal with a piece left inside: the tube is out and the record is not ended. */
export const brokenFragment: Story = {
  patient: person("Snapdrawer", "Lavinia", {
    number: "004765",
    birthOn: "30 jan 1970",
    telephones: "555 0144",
  }),
  acts: [
    tube(83, "right", { kind: "pcn r", size: "8 f", retention: "locking loop" }),
    call(81, "Well."),
    act(5, {
      by: "physician",
      form: "removal decided",
      tube: "right",
      texts: { by: "+5", owner: "any physician", decidedBy: "Petra Physick", reason: "The stone is gone." },
    }),
    call(4, "Knows the day."),
    act(0, {
      at: "08:40",
      by: "physician",
      form: "broken",
      tube: "right",
      texts: {
        fragmentInside: "yes",
        part: "the tip of the loop",
        note: "Seen under imaging. The patient has been told.",
      },
    }),
  ],
};
