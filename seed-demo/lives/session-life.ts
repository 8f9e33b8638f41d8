import { onWeekday } from "#seed-demo/days.ts";
import { placedAndCalled, type Tube } from "#seed-demo/lives/course.ts";
import type { Chance } from "#seed-demo/lives/phase.ts";
import { type Act, act, call, check, emptied } from "#seed-demo/story.ts";

/** A tunnelled drain: emptied by session at home, looked at every four weeks. */
export function sessionLife(
  chance: Chance,
  tube: Tube,
  { age, reviewed }: { readonly age: number; readonly reviewed: number },
): Act[] {
  const { startDay, draw } = chance;
  const { word, cast } = tube;
  const placedOn = onWeekday(startDay, age);
  const acts = placedAndCalled(chance, tube, { on: placedOn });
  acts.push(
    act(onWeekday(startDay, age - 14), {
      form: "anchors removed",
      tube: word,
      texts: { what: "the skin suture" },
    }),
  );
  for (let daysAgo = reviewed; daysAgo < placedOn - 16; daysAgo += 21)
    acts.push(check(onWeekday(startDay, daysAgo), word, { finding: "Cuff healed in, site quiet." }));
  acts.push(call(onWeekday(startDay, age - 20), "The home nurse empties it."));
  const [least, most] = cast.output?.ml ?? [0, 0];
  for (let daysAgo = 36; daysAgo >= 1; daysAgo -= draw.between(2, 4)) {
    const drained = String(draw.between(least, most));
    const texts = { drained, flushGiven: "none", characters: "serous", reportedBy: "the home nurse" };
    if (daysAgo < placedOn) acts.push(emptied(daysAgo, word, { at: "17:30", ...texts }));
  }
  return acts;
}
