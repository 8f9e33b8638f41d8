import { call, noAnswer, person, type Story, tube, visit } from "#seed-demo/story.ts";

/** Rebooked three times: each visit is newer than the last, and the tube is as old as it is. */
export const rebookedThreeTimes: Story = {
  patient: person("Laterbridge", "Ignatius", {
    number: "004750",
    birthOn: "22 sep 1963",
    telephones: "555 0125",
  }),
  acts: [
    tube(95, "left", { kind: "pcn l", size: "8 f", takes: ".035 in", retention: "locking loop" }),
    call(93, "Well."),
    visit(26, { form: "visit booked", visit: "first", tubes: [["left", "exchange"]], inDays: 2, texts: {} }),
    visit(18, {
      form: "visit noted",
      visit: "first",
      state: "did not attend",
      texts: { reason: "A burst pipe at home." },
    }),
    call(18, "Did not come: a burst pipe at home. Rebooked."),
    visit(18, {
      at: "15:00",
      form: "visit booked",
      visit: "second",
      tubes: [["left", "exchange"]],
      inDays: 2,
      texts: {},
    }),
    visit(11, {
      form: "visit noted",
      visit: "second",
      state: "did not attend",
      texts: { reason: "No transport." },
    }),
    call(11, "Did not come: no transport. Rebooked."),
    visit(11, {
      at: "15:00",
      form: "visit booked",
      visit: "third",
      tubes: [["left", "exchange"]],
      inDays: 2,
      texts: {},
    }),
    visit(4, { form: "visit noted", visit: "third", state: "did not attend", texts: {} }),
    noAnswer(4, "Did not come. No answer at either number."),
  ],
};
