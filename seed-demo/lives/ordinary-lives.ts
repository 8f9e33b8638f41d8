import { castings } from "#seed-demo/lives/castings.ts";
import type { Chance } from "#seed-demo/lives/phase.ts";
import { strangers } from "#seed-demo/lives/strangers.ts";
import { type Act, act, type Story } from "#seed-demo/story.ts";
import type { Texts } from "#shared/record/field-spec.ts";

const noted: readonly Texts[] = [
  { allergies: "none known", bloodThinners: "none" },
  { allergies: "contrast", bloodThinners: "none" },
  { allergies: "latex", bloodThinners: "?" },
  {
    allergies: "none known",
    bloodThinners: "a tablet each morning",
    bloodThinnerReason: "an uneven heart beat",
  },
  { diabetes: "yes", allergies: "none known" },
];

/** What bears on the tubes is noted on the day of the first one, of some. */
function conditions({ draw }: Chance, acts: readonly Act[]): Act[] {
  const first = Math.max(...acts.map(({ daysAgo }) => daysAgo));
  if (!draw.percent(40)) return [];
  return [act(first, { at: "10:05", form: "conditions noted", texts: draw.from(noted) })];
}

/** Patients whose tubes are followed as most are, beside those that were told before: `taken` has their names and numbers. */
export function ordinaryLives(chance: Chance, taken: readonly Texts[]): readonly Story[] {
  const { draw, startDay } = chance;
  const patients = strangers(draw, { count: castings.length, startDay, taken });
  return patients.flatMap((patient, index) => {
    const acts = castings[index]?.(chance) ?? [];
    return acts.length === 0 ? [] : [{ patient, acts: [...acts, ...conditions(chance, acts)] }];
  });
}
