import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Nephrostomy, then nephroureteral catheter, then ureteral stent: each conversion closes one record and opens the next. */
export const convertedTwice: Story = {
  patient: person("Larkspindle", "Edwin", {
    number: "004718",
    birthOn: "2 mar 1966",
    telephones: "555 0184",
  }),
  acts: [
    tube(140, "first", { kind: "pcn l", size: "8 f", retention: "locking loop" }),
    call(138, "Well."),
    act(110, {
      form: "converted",
      tube: "first",
      opens: "second",
      texts: { kind: "nephroureteral", size: "8.5 f", when: "today" },
    }),
    act(108, { form: "capped", tube: "second", texts: { when: "today", bagAtHome: "yes" } }),
    call(107, "Capped, no pain, no fever."),
    act(60, {
      form: "converted",
      tube: "second",
      opens: "third",
      texts: { kind: "stent", size: "7 f", when: "today", plan: "remove by +80 Dr Hazelbarrow" },
    }),
    call(58, "Knows that a stent is inside and when it comes out."),
  ],
};
