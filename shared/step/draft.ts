import type { Reach } from "#shared/call/reach.ts";
import type { ClinicalState } from "#shared/clinical/clinical-state.ts";
import type { ClinicCalendar, DayWindow, Moved } from "#shared/day/clinic-days.ts";
import { addDays, type Day } from "#shared/day/day.ts";
import type { Zone } from "#shared/day/instant.ts";
import type { TubeWithReadings } from "#shared/output/alarm/reason.ts";
import type { Reading } from "#shared/output/reading.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { Why } from "#shared/step/step.ts";
import type { Pins } from "#shared/tube/event.ts";
import type { Conditions } from "#shared/tube/payloads.ts";
import type { Clock, TubeState } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** A step before the calendar has had its say. */
export type Draft = { readonly kind: StepKind; readonly window: DayWindow; readonly why: readonly Why[] };

/** What the birth date says; unknown is an answer of its own, never taken for an adult in silence. */
export type Age18 = "adult" | "under 18" | "unknown";

/** One tube with what its steps are computed from. */
export type TubeQuestion = {
  readonly tube: TubeState;
  readonly conditions: Conditions;
  readonly clinical: ClinicalState;
  readonly age: Age18;
  readonly protocol: Protocol;
  readonly calendar: ClinicCalendar;
  /** The clinic's zone: a day is a day of the clinic. */
  readonly zone: Zone;
  /** How the patient is reached, as far as it says when. */
  readonly reach: Reach;
  /** The standing readings of this tube, in any order. */
  readonly readings: readonly Reading[];
  /** The patient's other tubes with theirs; asked for only where they make a difference. */
  readonly others: () => readonly TubeWithReadings[];
};

export const why = (code: Why["code"], args: Why["args"] = {}, eventId: string | null = null): Why => ({
  code,
  args,
  eventId,
});

/** While nobody has approved the version, each date from it says so. */
export const exampleLines = ({ approved, version }: Protocol): Why[] =>
  approved === null ? [why("row-example", { version })] : [];

/** A date that fell on a day on which it could not stay. */
export const moved = ({ end, from, to, because }: Moved): Why =>
  why("moved", {
    end,
    from,
    to,
    because: because.code,
    reason: "reason" in because ? because.reason : null,
  });

/** Where no tube has any: the first version of both tables. */
export const NO_PINS: Pins = { protocol: 1, calendar: 1 };

export const dueOn = (on: Day): DayWindow => ({ earliest: null, target: on, latest: null });

/**
 * From one day to another after a start. What was recorded later than that, as a tube taken over is, is asked about on the day of recording:
 * what was done by then, nobody here knows.
 */
export function firstWindow(
  { since, recordedOn }: Pick<Clock, "since" | "recordedOn">,
  { from, to }: { readonly from: number; readonly to: number },
): DayWindow {
  const start = since.earliest;
  if (start === null || recordedOn > addDays(start, to)) return dueOn(recordedOn);
  const target = addDays(start, from);
  return { earliest: target, target, latest: addDays(start, to) };
}

export const single = (kind: StepKind, on: Day, lines: readonly Why[]): Draft => ({
  kind,
  window: dueOn(on),
  why: lines,
});
