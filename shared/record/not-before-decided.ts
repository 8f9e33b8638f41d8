import type { Day } from "#shared/day/day.ts";
import type { WhenAt } from "#shared/day/read-when-at.ts";
import type { Refusal } from "#shared/errors/refusal.ts";

/** A decision is for days to come: what it names cannot lie before the day on which it was made. */
export const notBeforeDecided = (field: string, day: Day, { when }: WhenAt): readonly Refusal[] =>
  when.earliest !== null && day < when.earliest ? [{ code: "day-before-decision", field }] : [];
