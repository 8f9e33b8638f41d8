import { act, call, check, emptied, person, type Story, tube } from "#seed-demo/story.ts";

/** Irrigation through a cecostomy is treatment and not flush: a kind of fluid of its own. */
export const irrigationIsNoFlush: Story = {
  patient: person("Brindlewhim", "Ottokar", {
    number: "004753",
    birthOn: "19 jan 1988",
    telephones: "555 0128",
  }),
  acts: [
    tube(180, "bowel", { kind: "cecostomy", size: "10 f", retention: "loop" }),
    call(178, "First irrigation went well."),
    check(120, "bowel", { finding: "Site quiet." }),
    act(60, { form: "flushed", tube: "bowel", texts: { went: "easily", given: "20" } }),
    ...[9, 7, 5, 3, 1].map((daysAgo) =>
      emptied(daysAgo, "bowel", {
        at: "20:00",
        drained: "?",
        flushGiven: "none",
        otherIn: "irrigation 500",
        characters: "feculent",
        reportedBy: "the patient",
      }),
    ),
    call(2, "Irrigates every second evening."),
  ],
};
