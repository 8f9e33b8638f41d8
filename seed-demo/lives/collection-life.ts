import { onWeekday } from "#seed-demo/days.ts";
import { mornings, placedAndCalled, type Tube } from "#seed-demo/lives/course.ts";
import type { Chance } from "#seed-demo/lives/phase.ts";
import { type Act, act, call, check } from "#seed-demo/story.ts";
import type { Texts } from "#shared/record/field-spec.ts";

const cavities = [
  "left paracolic",
  "pelvic",
  "right subphrenic",
  "appendix bed",
  "liver, right lobe",
] as const;

/** `reviewed`: days since somebody last looked. `removed`: it came out by decision, so many days ago. */
export type Collection = { readonly age: number; readonly reviewed: number; readonly removed?: number };

/** Decided, told, and taken out whole, on three weekdays. */
function removal({ startDay }: Chance, daysAgo: number, { word }: Tube): Act[] {
  const out = onWeekday(startDay, daysAgo);
  const decided = onWeekday(startDay, out + 2);
  const texts = {
    by: "+5",
    owner: "any physician",
    decidedBy: "Petra Physick",
    reason: "Dry, well, cavity gone.",
  };
  const seen = { whole: "yes", loopReleased: "yes", byWhom: "Petra Physick", seenHow: "at the bedside" };
  return [
    act(decided, { by: "physician", form: "removal decided", tube: word, texts }),
    call(decided, "Knows the day."),
    act(out, { at: "11:00", by: "physician", form: "removed", tube: word, texts: seen }),
  ];
}

/** A collection drain: emptied daily, less each day, looked at every other week, taken out in the end. */
export function collectionLife(chance: Chance, tube: Tube, { age, reviewed, removed }: Collection): Act[] {
  const { startDay, draw } = chance;
  const { cast, word } = tube;
  const placedOn = onWeekday(startDay, age);
  const cavity: Texts = "cavity" in cast.texts ? {} : { cavity: draw.from(cavities) };
  const acts = placedAndCalled(chance, tube, { on: placedOn, texts: cavity });
  for (let daysAgo = reviewed; daysAgo < placedOn - 3; daysAgo += 10)
    acts.push(
      check(onWeekday(startDay, daysAgo), word, { study: "sinogram", finding: "The cavity is smaller." }),
    );
  acts.push(
    act(onWeekday(startDay, age - 4), {
      form: "flushed",
      tube: word,
      texts: { went: "easily", given: "10" },
    }),
  );
  if (removed !== undefined) return [...acts, ...removal(chance, removed, tube)];
  return [...acts, ...mornings(chance, tube, { days: Math.min(13, placedOn - 1), fallsTo: 0.35 })];
}
