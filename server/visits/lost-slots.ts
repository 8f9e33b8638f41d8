import { visitLinesFrom } from "#db/queries/visits.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { clinicSlots } from "#server/visits/clinic-slots.ts";
import { standsAgainst } from "#server/visits/stands-against.ts";
import { visitNames } from "#server/visits/visit-names.ts";
import type { Day } from "#shared/day/day.ts";
import type { Clinic } from "#shared/visit/may-book.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { slotPhrase } from "#shared/words/visit-events.ts";

/** A booked visit that could no longer be booked where it is, and why. Nothing moves it but a person. */
export type LostSlot = {
  readonly visitId: string;
  readonly patientId: string;
  readonly whose: string;
  readonly on: Day;
  readonly slot: string;
  readonly says: string;
};

/** What another calendar or other rooms would leave standing where it cannot be, and does not already, in order of time. Writes nothing. */
export function lostSlots(
  db: Database,
  changed: Partial<Pick<Clinic, "calendar" | "rooms">>,
): readonly LostSlot[] {
  const before = clinicSlots(db, now(db));
  const after = { ...before, ...changed };
  const names = visitNames(db, before);
  return visitLinesFrom(db, before.now.on).flatMap(
    ({ visit: { patientId, visit }, familyName, givenName }) => {
      const against = standsAgainst(visit, { clinic: after, names });
      if (against.length === 0 || standsAgainst(visit, { clinic: before, names }).length > 0) return [];
      return [
        {
          visitId: visit.id,
          patientId,
          whose: `${familyName}, ${givenName}`,
          on: visit.on,
          slot: slotPhrase(visit),
          says: against.map(refusalSentence).join(" "),
        },
      ];
    },
  );
}
