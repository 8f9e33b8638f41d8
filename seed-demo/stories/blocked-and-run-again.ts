import { act, call, check, person, type Story, tube } from "#seed-demo/story.ts";

/** Blocked over the weekend, a little blood, then running again: looked at, and quiet since. */
export const blockedAndRunAgain: Story = {
  patient: person("Corkindell", "Millicent", {
    number: "004769",
    birthOn: "16 may 1943",
    telephones: "555 0148",
  }),
  acts: [
    tube(46, "bile", { kind: "iebd", side: "r", size: "10 f", takes: ".038 in", retention: "locking loop" }),
    call(44, "Well."),
    act(19, {
      at: "08:30",
      by: "caller",
      form: "blocked",
      tube: "bile",
      texts: { when: "-1", toldBy: "the patient" },
    }),
    act(19, { at: "11:00", form: "unblocked", tube: "bile", texts: { how: "flushed with 10 mL" } }),
    act(18, { form: "bled", tube: "bile", texts: { heavy: "no", note: "Pink for an hour." } }),
    check(17, "bile", { study: "cholangiogram", finding: "In place, runs freely." }),
    call(16, "Quiet since."),
    act(9, { at: "15:00", form: "capped", tube: "bile", texts: { bagAtHome: "yes" } }),
    call(8, "Capped, no pain."),
    act(6, { form: "uncapped", tube: "bile", texts: { mode: "to bag" } }),
  ],
};
