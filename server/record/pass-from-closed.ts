import { allStaff } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import type { Day } from "#shared/day/day.ts";
import { onDay } from "#shared/day/when.ts";
import type { OpenStep } from "#shared/step/step.ts";
import type { Command } from "#shared/tube/decide.ts";

/**
 * A step that was hidden while its owner left, and comes up again by an undo or a decision that lapses, passes to the role that its
 * owner had in it: no step is ever with somebody who cannot sign in.
 */
export function passFromClosed(db: Database, steps: readonly OpenStep[], today: Day): readonly Command[] {
  const named = steps.filter(({ owner, tubeId }) => owner.staffId !== null && tubeId !== null);
  if (named.length === 0) return [];
  const closed = new Set(allStaff(db).flatMap(({ id, closedAt }) => (closedAt === null ? [] : [id])));
  return named
    .filter(({ owner }) => closed.has(owner.staffId ?? ""))
    .map(({ tubeId, kind, owner }) => ({
      eventId: newId(),
      kind: "step assigned",
      tubes: tubeId === null ? [] : [tubeId],
      when: onDay(today),
      time: null,
      daySequence: 0,
      payload: { step: kind, owner: { role: owner.role } },
      amends: null,
      lastSeen: Number.MAX_SAFE_INTEGER,
    }));
}
