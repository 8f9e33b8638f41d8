import { act, call, check, person, type Story, tube } from "#seed-demo/story.ts";

/** A clamp trial started five days before the exchange is due, and failed: the exchange date stood all the while. */
export const trialBeforeTheExchange: Story = {
  patient: person("Clampersand", "Viola", {
    number: "004759",
    birthOn: "14 apr 1969",
    telephones: "555 0136",
  }),
  acts: [
    tube(72, "right", { kind: "nuc", side: "r", size: "8.5 f", takes: ".038 in", retention: "two loops" }),
    call(70, "Well."),
    check(6, "right", { study: "nephrostogram", finding: "Runs into the bladder." }),
    act(5, {
      form: "clamp trial started",
      tube: "right",
      texts: { covers: "Corin Callwell", bagAtHome: "yes" },
    }),
    call(4, "No pain so far."),
    call(3, "Ache in the flank since noon."),
    act(2, {
      at: "09:20",
      form: "clamp trial failed",
      tube: "right",
      texts: { mode: "to bag", note: "Pain, 37.9 C. Back to the bag." },
    }),
    act(2, {
      at: "09:30",
      by: "physician",
      form: "plan recorded",
      tube: "right",
      texts: { plan: "exchange by +7 Dr Hazelbarrow because the trial failed" },
    }),
  ],
};
