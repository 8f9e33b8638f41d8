import type { Day } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import { type OpenStep, ownerOn } from "#shared/step/step.ts";
import type { NameOf } from "#shared/words/sentence.ts";
import { ownerWords } from "#shared/words/steps.ts";

/** Who has a step today: a person by name where one is named, else the role. */
export function ownerToday(step: OpenStep, today: Day, nameOf: NameOf): string {
  const { staffId, ...owner } = ownerOn(step, today);
  return staffId === null ? ownerWords(owner) : `${nameOf(staffId)}, ${ownerWords(owner)}`;
}

/** "A physician is asked from Mon 2 Nov 2026 and has it from Fri 13 Nov 2026." Empty where the row names no such day. */
export function ladderWords({ escalatesOn, physicianOn }: OpenStep): string {
  const asked = escalatesOn === null ? [] : [`is asked from ${printDay(escalatesOn)}`];
  const has = physicianOn === null ? [] : [`has it from ${printDay(physicianOn)}`];
  const parts = [...asked, ...has];
  return parts.length === 0 ? "" : `A physician ${parts.join(" and ")}.`;
}
