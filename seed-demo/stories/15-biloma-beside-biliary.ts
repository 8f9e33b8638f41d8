import { act, call, emptiedDaily, person, type Story, tube } from "#seed-demo/story.ts";

/** A biloma drain beside a biliary drain: less from the one is good news, less from the other is not. */
export const bilomaBesideBiliary: Story = {
  patient: person("Kettlebourne-Sprig", "Balthasar", {
    number: "004742",
    birthOn: "25 nov 1966",
    telephones: "555 0114",
  }),
  acts: [
    tube(10, "biloma", {
      kind: "biloma drain",
      size: "10 f",
      cavity: "biloma under the liver",
      expectedFluid: "bilious, serous",
      retention: "locking loop",
    }),
    tube(10, "bile", { kind: "external biliary drain", side: "r", size: "8 f", retention: "locking loop" }),
    act(7, {
      at: "11:30",
      form: "fluid tested",
      tube: "biloma",
      texts: { bilirubin: "212", bilirubinSerum: "31", amylase: "38", amylaseLimit: "110" },
    }),
    call(9, "Both run, no fever."),
    call(9, "Both run, no fever."),
    ...emptiedDaily({ from: 8, word: "biloma" }, [120, 95, 80, 62, 44, 41, 30, 26], {
      flushGiven: "10",
      characters: "bilious",
    }),
    ...emptiedDaily({ from: 8, word: "bile" }, [260, 300, 340, 380, 420, 410, 430, 440], {
      flushGiven: "5",
      characters: "bilious",
    }),
  ],
};
