import { act, call, noAnswer, person, type Story, tube } from "#seed-demo/story.ts";

/** Rebooked three times: each plan is newer than the last, and the tube is as old as it is. */
export const rebookedThreeTimes: Story = {
  patient: person("Laterbridge", "Ignatius", {
    number: "004750",
    birthOn: "22 sep 1963",
    telephones: "555 0125",
  }),
  acts: [
    tube(95, "left", { kind: "pcn l", size: "8 f", takes: ".035 in", retention: "locking loop" }),
    call(93, "left", "Well."),
    act(26, {
      form: "exchange planned",
      tube: "left",
      texts: { on: "+8", wire: ".035 in", size: "8 f", takes: ".038 in" },
    }),
    call(18, "left", "Did not come: a burst pipe at home. Rebooked."),
    act(18, {
      at: "15:00",
      form: "exchange planned",
      tube: "left",
      texts: { on: "+7", wire: ".035 in", size: "8 f", takes: ".038 in" },
    }),
    call(11, "left", "Did not come: no transport. Rebooked."),
    act(11, {
      at: "15:00",
      form: "exchange planned",
      tube: "left",
      texts: { on: "+7", wire: ".035 in", size: "8 f", takes: ".038 in" },
    }),
    noAnswer(4, "left", "Did not come. No answer at either number."),
  ],
};
