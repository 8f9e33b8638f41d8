import { ordinaryLives } from "#seed-demo/lives/ordinary-lives.ts";
import { seeded } from "#seed-demo/seeded.ts";
import type { Story } from "#seed-demo/story.ts";
import { toldStories } from "#seed-demo/told-stories.ts";
import type { Day } from "#shared/day/day.ts";

export type Beginning = {
  /** The clinic's first day as a reader meets it: every act lies before it, or on its morning. */
  readonly startDay: Day;
  /** Another seed draws other ordinary lives; the stories written by hand stay. */
  readonly seed: number;
};

/** The whole invented clinic: the same stories for the same start day and seed. */
export function inventedClinic({ startDay, seed }: Beginning): readonly Story[] {
  const told = toldStories(startDay);
  const chance = { startDay, draw: seeded(seed) };
  return [
    ...told,
    ...ordinaryLives(
      chance,
      told.map(({ patient }) => patient),
    ),
  ];
}
