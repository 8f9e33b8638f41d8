import type { Day } from "#shared/day/day.ts";
import type { Why } from "#shared/step/step.ts";
import { type PrerequisiteThing, prerequisiteThings } from "#shared/visit/prerequisite-things.ts";

/** Things that are open before a visit, and the first day by which one of them is to be settled; null where none has a day. */
export type ToSettle = { readonly things: readonly PrerequisiteThing[]; readonly by: Day | null };

/** Read off the why of the step that asks for them, in the order of the closed list. */
export function toSettle(lines: readonly Why[]): ToSettle {
  const open = lines.filter(({ code }) => code === "to-settle");
  const [by] = open.flatMap(({ args: { day } }) => day ?? []).toSorted();
  return {
    things: prerequisiteThings.filter((thing) => open.some(({ args }) => args.thing === thing)),
    by: (by as Day | undefined) ?? null,
  };
}
