import { onWeekday } from "#seed-demo/days.ts";
import {
  balloonChecks,
  betweenVisits,
  calledAfter,
  filled,
  mornings,
  placedAndCalled,
  skinFreed,
  type Tube,
} from "#seed-demo/lives/course.ts";
import { ageIn, type Chance, daysOf, type Phase } from "#seed-demo/lives/phase.ts";
import { type Act, act } from "#seed-demo/story.ts";
import type { Texts } from "#shared/record/field-spec.ts";

/** How many catheters have lain in the tract, and where the last of them stands. */
export type Turns = { readonly phase: Phase; readonly turns: number; readonly logged?: number };

function exchange({ draw }: Chance, daysAgo: number, { word, cast }: Tube): Act {
  const difficult: Texts = draw.percent(10) ? { difficult: "yes" } : {};
  return act(daysAgo, {
    form: "exchanged",
    tube: word,
    texts: { when: "today", ...filled(cast), ...difficult },
  });
}

/** The days on which a catheter began, oldest first: each lies a few days before the target of the one before it. */
function beginnings({ startDay, draw }: Chance, { cast }: Tube, { phase, turns }: Turns): number[] {
  const { target } = daysOf(cast.kind);
  const began = [onWeekday(startDay, ageIn(phase, cast.kind, draw))];
  while (began.length < turns)
    began.unshift(onWeekday(startDay, (began[0] ?? 0) + target - draw.between(2, 9)));
  return began;
}

/** A tube that is exchanged by the calendar, with calls, flushes and looks between. */
export function exchangedLife(chance: Chance, tube: Tube, life: Turns): Act[] {
  const began = beginnings(chance, tube, life);
  const visits = began.flatMap((daysAgo, turn) => {
    const span = { from: daysAgo, to: began[turn + 1] ?? 0 };
    const between = [...betweenVisits(chance, tube, span), ...balloonChecks(chance, tube, span)];
    if (turn === 0) {
      const placed = placedAndCalled(chance, tube, { on: daysAgo });
      return [...placed, ...skinFreed(chance, tube, daysAgo), ...between];
    }
    return [exchange(chance, daysAgo, tube), ...calledAfter(chance, daysAgo), ...between];
  });
  return [...visits, ...mornings(chance, tube, { days: life.logged ?? 0, fallsTo: 1 })];
}
