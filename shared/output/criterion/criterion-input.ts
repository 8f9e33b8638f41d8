import type { ClinicalState } from "#shared/clinical/clinical-state.ts";
import type { Instant, Zone } from "#shared/day/instant.ts";
import type { Cavity } from "#shared/output/criterion/cavity.ts";
import { changesOf } from "#shared/output/criterion/changes.ts";
import type { DaysInCavity } from "#shared/output/criterion/judged-days.ts";
import type { NetDays } from "#shared/output/net-days.ts";
import type { Reading } from "#shared/output/reading.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { Age18 } from "#shared/step/draft.ts";
import type { Conditions } from "#shared/tube/payloads.ts";
import type { TubeState } from "#shared/tube/state.ts";

export type CriterionInput = {
  readonly tube: TubeState;
  /** Every tube of the patient: those of the same cavity are looked at with it. */
  readonly tubes: readonly TubeState[];
  /** The standing readings of every tube of its cavity, its own among them, in any order. */
  readonly readings: readonly Reading[];
  readonly clinical: ClinicalState;
  readonly conditions: Conditions;
  readonly age: Age18;
  /** The version that the tube's clock is pinned to. */
  readonly protocol: Protocol;
  readonly zone: Zone;
  readonly now: Instant;
};

/** The same with what stands in the cavity: one output for each tube that drains it, in that order. */
export type AskedCriterion = CriterionInput & {
  readonly cavity: Cavity;
  readonly outputs: readonly NetDays[];
};

export const daysOf = ({ tube, outputs, cavity, zone, now }: AskedCriterion): DaysInCavity => ({
  days: outputs.map(({ days }) => days),
  changes: changesOf(tube, cavity.mates),
  zone,
  now,
});
