import { lastFriday } from "#seed-demo/days.ts";
import { act, call, check, person, type Story, tube } from "#seed-demo/story.ts";
import type { Day } from "#shared/day/day.ts";

/** A trial started on a Friday: its first calls fall on days when the clinic is closed, and somebody covers them. */
export const trialOverTheWeekend = (startDay: Day): Story => {
  const friday = lastFriday(startDay);
  return {
    patient: person("Weekendrop", "Philippa", {
      number: "004763",
      birthOn: "6 sep 1958",
      telephones: "555 0142",
    }),
    acts: [
      tube(friday + 28, "bile", {
        kind: "iebd",
        side: "l",
        size: "10 f",
        takes: ".038 in",
        retention: "locking loop",
      }),
      call(friday + 26, "Well."),
      check(friday, "bile", { study: "cholangiogram", finding: "Runs freely into the bowel." }),
      act(friday, {
        at: "11:45",
        form: "clamp trial started",
        tube: "bile",
        texts: { covers: "the ward in Fernhollow", bagAtHome: "yes" },
      }),
      ...(friday > 1 ? [call(friday - 1, "Rung by the ward: no pain, no fever.")] : []),
      ...(friday > 2 ? [call(friday - 2, "Rung by the ward: slept well.")] : []),
    ],
  };
};
