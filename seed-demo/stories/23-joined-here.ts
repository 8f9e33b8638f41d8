import { act, call, join, person, type Story, tube } from "#seed-demo/story.ts";

/** One patient under two numbers, found out and put together: both tubes stand in one record. */
export const joinedHere: Story = {
  patient: person("Tallowmere", "Wilmot", {
    number: "004775",
    birthOn: "28 sep 1969",
    telephones: "555 0186",
  }),
  acts: [
    tube(36, "drain", {
      kind: "abscess drain",
      size: "10 f",
      cavity: "right psoas",
      retention: "locking loop",
    }),
    call(34, "Little pain, sleeps well."),
    act(6, { form: "flushed", tube: "drain", texts: { went: "easily", given: "10", cameBack: "yes" } }),
    join(4, {
      other: "F-3120",
      texts: { how: "Asked for both numbers on the telephone; the letter from Fernhollow names them." },
    }),
  ],
};
