import { monthOf } from "#seed-demo/days.ts";
import { act, call, person, type Story, tube } from "#seed-demo/story.ts";
import type { Day } from "#shared/day/day.ts";

/** Taken over with no more than a month: counted from its first day for the tube, from its last for the tract. */
export const sometimeThatMonth = (startDay: Day): Story => ({
  patient: person("Fernshuttle", "Ambrosia", {
    number: "004737",
    birthOn: "17 sep 1961",
    telephones: "555 0107",
  }),
  acts: [
    tube(6, "left", {
      kind: "pcn l",
      size: "~8 f",
      when: monthOf(startDay, 31),
      from: "a clinic in Fernhollow",
    }),
    act(6, {
      form: "facts noted",
      tube: "left",
      texts: { externalLength: "14 cm", flushOrder: "none", toldBy: "the discharge letter" },
    }),
    call(5, "Does not know the day either. The letter has been asked for."),
  ],
});
