import { act, call, person, type Story, tube } from "#seed-demo/story.ts";

/** Lost on day six and newly punctured on the same side: the tract's age starts again. */
export const newTract: Story = {
  patient: person("Oddwater", "Leopold", { number: "004722", birthOn: "9 oct 1969", telephones: "555 0121" }),
  acts: [
    tube(26, "pelvic", { kind: "abscess drain", size: "10 f", cavity: "pelvic", retention: "locking loop" }),
    call(24, "Well."),
    act(20, { form: "fell out", tube: "pelvic", texts: { when: "today 09:00", whole: "yes" } }),
    act(20, {
      at: "16:00",
      form: "new puncture",
      tube: "pelvic",
      texts: { when: "today 15:00", size: "10 f" },
    }),
    call(18, "Sore at the new site."),
  ],
};
