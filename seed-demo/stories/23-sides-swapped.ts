import { act, call, check, person, type Story, tube } from "#seed-demo/story.ts";

/** Left and right swapped in a report: asked, looked at with the operator, and both sides set in one act. */
export const sidesSwapped: Story = {
  patient: person("Mirrorwick", "Amias", { number: "004749", birthOn: "1 mar 1948", telephones: "555 0124" }),
  acts: [
    tube(58, "one", { kind: "pcn l", size: "8 f", takes: ".035 in", retention: "locking loop" }),
    tube(58, "two", { kind: "pcn r", size: "10 f", takes: ".038 in", retention: "locking loop" }),
    call(56, "Both drain."),
    call(56, "Both drain."),
    act(40, {
      form: "reconcile asked",
      texts: { about: "sides", says: "The report has the 10 F on the left, the record on the right." },
    }),
    act(38, {
      by: "physician",
      form: "reconciled",
      texts: { about: "sides", how: "Films looked at with the operator.", side1: "right", side2: "left" },
    }),
    act(38, { at: "10:30", form: "verified", tube: "one", texts: { how: "labels on both hubs read" } }),
    check(30, "two", { study: "nephrostogram", finding: "Loop in the renal pelvis." }),
  ],
};
