import { onWeekday } from "#seed-demo/days.ts";
import { betweenVisits, placedAndCalled, type Tube } from "#seed-demo/lives/course.ts";
import type { Chance } from "#seed-demo/lives/phase.ts";
import { type Act, act, call, told } from "#seed-demo/story.ts";

/** `stays`: days that the operator leaves it in. `removed`: taken out as planned. */
export type Stent = { readonly age: number; readonly stays: number; readonly removed?: boolean };

/** A stent wholly inside: it has nothing but its date, and somebody who knows of it. */
export function stentLife(chance: Chance, tube: Tube, { age, stays, removed = false }: Stent): Act[] {
  const { startDay } = chance;
  const { word } = tube;
  const placedOn = onWeekday(startDay, age);
  const plan = `remove by +${stays} Dr Hazelbarrow`;
  const out = onWeekday(startDay, placedOn - stays + 3);
  const acts = [
    ...placedAndCalled(chance, tube, { on: placedOn, texts: { plan } }),
    act(onWeekday(startDay, age - 5), {
      form: "facts noted",
      tube: word,
      texts: { fullLength: "26 cm", note: "The card with the date is in the patient's hands." },
    }),
    told(onWeekday(startDay, age - 5), word),
    call(onWeekday(startDay, age - 12), "Knows that a stent is inside and when it comes out."),
    ...betweenVisits(chance, tube, { from: placedOn - 12, to: removed ? out : 0 }),
  ];
  if (!removed) return acts;
  const seen = { whole: "yes", loopReleased: "?", byWhom: "Dr Hazelbarrow", seenHow: "cystoscopy" };
  return [...acts, act(out, { form: "removed", tube: word, texts: seen })];
}
