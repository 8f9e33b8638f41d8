import { minuteOf } from "#shared/call/part-now.ts";
import { type Day, daysBetween } from "#shared/day/day.ts";
import { clockText, dayAt, type Instant, instantAt, type Zone } from "#shared/day/instant.ts";

/** What is known of a patient that says when somebody is rung. */
export type Reach = {
  /** The zone of the patient's own clock; null: the clinic's, or nobody said another. */
  readonly livesIn: Zone | null;
  /** Best times as they were typed, number by number. */
  readonly bestTimes: readonly string[];
};

/** Nobody said anything: by the clinic's clock, at any time. */
export const reachedAnyTime: Reach = { livesIn: null, bestTimes: [] };

type SaidOfReach = {
  readonly livesIn?: Zone | undefined;
  readonly telephones: readonly { readonly bestTimes: string | null }[];
};

export const reachOf = ({ livesIn, telephones }: SaidOfReach): Reach => ({
  livesIn: livesIn ?? null,
  bestTimes: telephones.flatMap(({ bestTimes }) => bestTimes ?? []),
});

/** The clock on the clinic's wall, and the patient's own. */
export type Clocks = { readonly clinic: Zone; readonly patient: Zone };

export const clocksOf = (clinic: Zone, { livesIn }: Pick<Reach, "livesIn">): Clocks => ({
  clinic,
  patient: livesIn ?? clinic,
});

/** What one clock shows when another shows `HH:MM` on a day. A time that a clock skips stands as it is. */
function shownBy(other: Zone, { on, time, by }: { on: Day; time: string; by: Zone }): string {
  if (other === by) return time;
  const at = instantAt(on, time, by);
  return at.ok ? clockText(at.value, other) : time;
}

/** `theirTime(2026-08-17, "18:00", Berlin and Denver)` is `10:00`. */
export const theirTime = (on: Day, time: string, { clinic, patient }: Clocks): string =>
  shownBy(patient, { on, time, by: clinic });

/** The other way round: `18:00` in Denver is `02:00` in Berlin. */
export const ourTime = (on: Day, time: string, { clinic, patient }: Clocks): string =>
  shownBy(clinic, { on, time, by: patient });

/** What the patient's own clock shows, and by how many minutes it is ahead of the clinic's; less than nothing: behind. */
export type There = { readonly zone: Zone; readonly time: string; readonly aheadMinutes: number };

const MINUTES_A_DAY = 1440;

/** `thereAt(2026-08-17T16:00Z, Berlin and Denver)` is 10:00, 480 minutes behind. Null where both clocks show the same. */
export function thereAt(at: Instant, { clinic, patient }: Clocks): There | null {
  const [ours, time] = [clockText(at, clinic), clockText(at, patient)];
  const days = daysBetween(dayAt(at, clinic), dayAt(at, patient));
  const aheadMinutes = days * MINUTES_A_DAY + minuteOf(time) - minuteOf(ours);
  return aheadMinutes === 0 ? null : { zone: patient, time, aheadMinutes };
}
