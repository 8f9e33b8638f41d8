import { clinicOf } from "#db/queries/clinic.ts";
import { newestVersions, protocolRow } from "#db/queries/versions.ts";
import type { Database } from "#db/sqlite.ts";
import { today } from "#server/clock.ts";
import type { Day } from "#shared/day/day.ts";

const DAY_MS = 86_400_000;

/** What every page says of the clinic. */
export type ClinicView = {
  readonly name: string;
  readonly today: Day;
  readonly isDemo: boolean;
  /** Whole days that a demo's clock is ahead of the real one. */
  readonly daysAhead: number;
  /** True until somebody of the clinic has approved the newest protocol version, with a date. */
  readonly isExample: boolean;
};

export function clinicView(db: Database): ClinicView {
  const { name, isDemo, clockOffsetMs } = clinicOf(db);
  const versions = newestVersions(db);
  const protocol = versions === null ? undefined : protocolRow(db, versions.protocol);
  return {
    name,
    today: today(db),
    isDemo,
    daysAhead: Math.round(clockOffsetMs / DAY_MS),
    isExample: protocol?.approvedOn == null,
  };
}
