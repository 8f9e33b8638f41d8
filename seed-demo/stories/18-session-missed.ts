import { act, call, check, emptied, person, type Story, tube } from "#seed-demo/story.ts";

/** A tunnelled pleural catheter: volumes a session, and a session that was missed is no low one. */
export const sessionMissed: Story = {
  patient: person("Quarrelwood-Finch", "Isolde", {
    number: "004745",
    birthOn: "3 feb 1950",
    telephones: "555 0118",
  }),
  acts: [
    tube(47, "right", { kind: "ipc", side: "r", size: "15.5 f", retention: "cuff" }),
    call(45, "Breathes more easily."),
    act(32, { form: "anchors removed", tube: "right", texts: { what: "the skin suture" } }),
    check(20, "right", { finding: "Lung up, a little fluid behind." }),
    ...[43, 40, 37, 34, 31, 28, 25, 22, 13, 10, 6, 3].map((daysAgo, session) =>
      emptied(daysAgo, "right", {
        at: "17:00",
        drained: String(800 - 40 * session),
        flushGiven: "none",
        characters: "serous",
        reportedBy: "the home nurse",
      }),
    ),
    call(16, "The session of this week was missed: the home nurse was ill."),
  ],
};
