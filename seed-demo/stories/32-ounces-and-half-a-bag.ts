import { act, call, emptied, person, type Story, tube } from "#seed-demo/story.ts";

/** Ounces, "about half a bag", and a figure with perhaps a nought too many: kept as spoken, converted, asked about. */
export const ouncesAndHalfABag: Story = {
  patient: person("Thistledown-Peck", "Gwendolen", {
    number: "004756",
    birthOn: "10 nov 1953",
    telephones: "555 0132",
  }),
  acts: [
    tube(17, "bile", { kind: "external biliary drain", side: "r", size: "8 f", retention: "locking loop" }),
    call(15, "Counts in ounces."),
    emptied(8, "bile", {
      drained: "14 oz",
      flushGiven: "2 x 5",
      reportedBy: "the patient",
      characters: "bilious",
    }),
    emptied(7, "bile", {
      drained: "~300",
      flushGiven: "2 x 5",
      reportedBy: "the patient",
      measuredBy: "estimate",
    }),
    emptied(6, "bile", { drained: "13 oz", flushGiven: "2 x 5", reportedBy: "the patient" }),
    emptied(5, "bile", { drained: "4100", flushGiven: "2 x 5", reportedBy: "the patient" }),
    emptied(4, "bile", { drained: "?", flushGiven: "?", reportedBy: "the patient" }),
    emptied(3, "bile", { drained: "0.4 l", flushGiven: "2 x 5", measuredBy: "bag scale" }),
    call(2, "Asked about the 4100: it may have been 410. Will look at the sheet."),
    act(2, {
      at: "15:30",
      form: "alarm closed",
      tube: "bile",
      texts: { done: "other", by: "Tansy Nurseworth", note: "The sheet says 410. To be corrected." },
    }),
  ],
};
