import { act, call, check, person, type Story, tube } from "#seed-demo/story.ts";

/** Labelled for 0.035, but crusted and hard to flush: by size it passes, by state in doubt. */
export const labelledButDoubtful: Story = {
  patient: person("Crustwhistle", "Roderic", {
    number: "004758",
    birthOn: "31 mar 1957",
    telephones: "555 0135",
  }),
  acts: [
    tube(72, "left", { kind: "pcn l", size: "8 f", takes: ".035 in", retention: "locking loop" }),
    call(70, "Well."),
    act(20, { form: "flushed", tube: "left", texts: { went: "hard", given: "5", cameBack: "no" } }),
    check(14, "left", {
      study: "nephrostogram",
      finding: "Crust at the loop.",
      concerns: "crusted, hard to flush",
    }),
    act(13, {
      form: "exchange planned",
      tube: "left",
      texts: { on: "+18", wire: ".035 in", size: "8 f", takes: ".038 in" },
    }),
    call(12, "Knows the date."),
  ],
};
