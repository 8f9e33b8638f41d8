import { act, call, check, emptiedDaily, person, type Story, tube } from "#seed-demo/story.ts";

/** The steps of somebody who left: the review is a named person's now, the exchange a role's. */
export const stepsThatWereHers: Story = {
  patient: person("Handlewhisk", "Barnabas", {
    number: "004764",
    birthOn: "26 may 1965",
    telephones: "555 0143",
  }),
  acts: [
    tube(34, "drain", {
      kind: "surgical drain",
      size: "15 f",
      from: "the surgical ward",
      cavity: "left flank",
      retention: "suture",
    }),
    call(33, "Bulb emptied twice a day."),
    ...emptiedDaily({ from: 12, word: "drain" }, [80, 74, 70, 66, 61, 58, 52, 50, 47, 44, 40], {
      flushGiven: "none",
      characters: "serosanguineous",
    }),
    act(9, {
      by: "lead",
      form: "step assigned",
      tube: "drain",
      texts: { step: "review", owner: "Petra Physick, physician" },
    }),
    act(9, {
      at: "10:20",
      by: "lead",
      form: "step assigned",
      tube: "drain",
      texts: { step: "remove", owner: "any nurse" },
    }),
    check(4, "drain", { finding: "Site clean, less each day." }),
  ],
};
