import type { ClinicalState } from "#shared/clinical/clinical-state.ts";
import type { Day } from "#shared/day/day.ts";
import type { Instant, Zone } from "#shared/day/instant.ts";
import type { Reading } from "#shared/output/reading.ts";
import type { Level } from "#shared/protocol/levels.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { Conditions } from "#shared/tube/payloads.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** What a row of output can make of readings that somebody has to be told now. */
export const alarmCodes = [
  "dry",
  "low",
  "high",
  "sudden-drop",
  "new-fluid",
  "session-over-ceiling",
  "session-symptoms",
  "session-falling",
  "breathless",
  "air-leak",
  "leak-while-shut",
  "symptoms-while-shut",
  "found-while-shut",
  "soaking-leak",
] as const;
export type AlarmCode = (typeof alarmCodes)[number];

export type AlarmArgs = Readonly<Record<string, string | number | null>>;

/** One reason of a tube's alarm, from its readings. The same evidence gives the same key, whatever else was logged since. */
export type AlarmReason = {
  readonly key: string;
  readonly code: AlarmCode;
  /** How soon somebody has to be reached; null where the row names no level. */
  readonly level: Level | null;
  /** The clinic's own act until somebody is reached; null is "no row". */
  readonly untilReached: string | null;
  /** The clinic day on which the row was met. */
  readonly on: Day;
  /** Up to when the evidence runs. */
  readonly at: Instant;
  /** Ids of the readings that it comes from; empty where it comes from an entry about the patient. */
  readonly readings: readonly string[];
  readonly eventId?: string;
  /** What the row says and what was found, with units in their names. */
  readonly args: AlarmArgs;
  /** Where the row comes from. */
  readonly source: string;
};

export type TubeWithReadings = { readonly tube: TubeState; readonly readings: readonly Reading[] };

/** One tube with what its alarms are computed from. Not from now: only what was logged speaks. */
export type AlarmInput = {
  readonly tube: TubeState;
  readonly conditions: Conditions;
  /** What was found of the patient. */
  readonly clinical: ClinicalState;
  /** The patient's other tubes with their standing readings; asked for only where they make a difference. */
  readonly others: () => readonly TubeWithReadings[];
  /** The standing readings of this tube, in any order. */
  readonly readings: readonly Reading[];
  /** The clinic's zone. */
  readonly zone: Zone;
  readonly protocol: Pick<Protocol, "output" | "outputRows" | "redFlags">;
};
