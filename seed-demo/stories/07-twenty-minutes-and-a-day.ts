import { act, call, emptied, emptiedDaily, person, type Story, tube } from "#seed-demo/story.ts";

/** Emptied at 23:50 and at 00:10, then once after 31 hours: rates by elapsed time, and a gap that shows. */
export const twentyMinutesAndADay: Story = {
  patient: person("Cobblewane", "Septimus", {
    number: "004734",
    birthOn: "30 jun 1964",
    telephones: "555 0104",
  }),
  acts: [
    tube(25, "bile", { kind: "external biliary drain", side: "l", size: "8.5 f", retention: "locking loop" }),
    call(23, "Draining well."),
    ...emptiedDaily({ from: 6, word: "bile" }, [510, 480, 495], {
      flushGiven: "2 x 5",
      characters: "bilious",
    }),
    act(2, {
      at: "00:20",
      by: "caller",
      form: "reading",
      tube: "bile",
      texts: { to: "yesterday 23:50", drained: "330", flushGiven: "5", characters: "bilious" },
    }),
    act(2, {
      at: "00:25",
      by: "caller",
      form: "reading",
      tube: "bile",
      texts: { to: "today 00:10", drained: "0", flushGiven: "none" },
    }),
    emptied(1, "bile", { at: "07:10", drained: "640", flushGiven: "2 x 5", characters: "bilious" }),
  ],
};
