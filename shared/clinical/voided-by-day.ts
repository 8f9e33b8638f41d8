import type { Findings } from "#shared/clinical/findings-schema.ts";
import type { Day } from "#shared/day/day.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { standingEvents } from "#shared/tube/history.ts";

export type VoidedFact = NonNullable<Findings["voidedVolume"]>;

/** What was voided in 24 hours, by the day for which it was noted: the newest of each. A note of no exact day is of none. */
export const voidedByDay = (events: readonly TubeEvent[]): ReadonlyMap<Day, VoidedFact> =>
  new Map(
    standingEvents(events).flatMap(({ event, when }): [Day, VoidedFact][] => {
      if (event.kind !== "clinical state noted" || when.precision !== "day") return [];
      const { voidedVolume } = event.payload.findings;
      return voidedVolume === undefined ? [] : [[when.earliest, voidedVolume]];
    }),
  );
