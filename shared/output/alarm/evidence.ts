import { type Instant, latestOf } from "#shared/day/instant.ts";
import type { AlarmInput } from "#shared/output/alarm/reason.ts";
import { byEmptying } from "#shared/output/alarm/runs.ts";
import { shutModes } from "#shared/output/low-day.ts";
import { type MeasuredInterval, measuredIntervals } from "#shared/output/measured-interval.ts";
import type { NetDay } from "#shared/output/net-day.ts";
import { flushIsOrdered, outputOfTube, placedAt } from "#shared/output/output-of-tube.ts";
import type { MlPer24h } from "#shared/output/rate.ts";
import type { Reading } from "#shared/output/reading.ts";
import { segmentCuts } from "#shared/output/segment-cuts.ts";
import type { OutputRows } from "#shared/protocol/output-rows.ts";
import type { RedFlagRow } from "#shared/protocol/red-flag-rows.ts";
import type { Role } from "#shared/tube/vocabulary.ts";

/** A complete day whose net is known. */
export type FullDay = Pick<NetDay, "day" | "from" | "to" | "readings"> & { readonly mlPer24h: MlPer24h };

export type Evidence = AlarmInput & {
  readonly rows: OutputRows;
  /** Every reading that is output, in order of time. What was drawn off at a procedure is none. */
  readonly intervals: readonly MeasuredInterval[];
  /** The same with those of which nobody knows when they began, in the order of emptying: what was seen in them was seen. */
  readonly looked: readonly Reading[];
  /** Since when the tube is set as it is now: its last change of size, mode, suction or position; null: since ever. */
  readonly since: Instant | null;
};

/** Meant to let nothing out, so that zero says nothing. */
export const isShut = ({ tube }: Pick<AlarmInput, "tube">): boolean => shutModes.includes(tube.mode);

const emptiesOrgans: readonly Role[] = ["drains an organ", "venting"];

/** Whether much or little out of it is an alarm: it drains an organ and is open to something. */
export const drainsNow = (of: Pick<AlarmInput, "tube">): boolean =>
  emptiesOrgans.includes(of.tube.role) && !isShut(of);

/** A red flag of the clinic's table by its id; undefined is "no row". */
export const flagOf = ({ protocol }: Evidence, id: string): RedFlagRow | undefined =>
  protocol.redFlags.find((flag) => flag.id === id);

/** Readings with the time that they ran over, and since when they speak of the tube as it is set now. */
export function evidenceOf(input: AlarmInput, rows: OutputRows): Evidence {
  const { tube, readings, zone } = input;
  const { intervals } = measuredIntervals(readings, {
    flushOrdered: flushIsOrdered(tube),
    placedAt: placedAt(tube, zone),
    now: latestOf(...readings.map(({ to }) => to)),
  });
  return {
    ...input,
    rows,
    intervals: intervals.filter(({ reading }) => !reading.procedureAspirate),
    looked: readings.filter(({ procedureAspirate }) => !procedureAspirate).toSorted(byEmptying),
    since: segmentCuts(tube.story, zone).at(-1) ?? null,
  };
}

/** The complete days of the tube as it is set now, in order. A missing day is not among them: it is not zero. */
export function fullDays({ tube, readings, zone, protocol, since }: Evidence): readonly FullDay[] {
  const now = latestOf(...readings.map(({ to }) => to));
  const { days } = outputOfTube(tube, { readings, zone, row: protocol.output, now });
  return days.flatMap(({ day, from, to, complete, net, readings: ids }) =>
    complete && net.kind === "known" && (since === null || from >= since)
      ? [{ day, from, to, readings: ids, mlPer24h: net.mlPer24h }]
      : [],
  );
}
