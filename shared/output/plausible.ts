import { median } from "#shared/output/median.ts";
import type { Microlitres } from "#shared/output/microlitre.ts";
import { HOUR_MS, type MlPer24h, ratePer24h } from "#shared/output/rate.ts";

/** The clinic's row: above what an entry is asked about. */
export type PlausibilityRow = {
  readonly overMlPer24h: MlPer24h;
  readonly overTimesMedian: number;
  readonly andMoreMl: number;
};

export type VolumeDoubt =
  | { readonly code: "more-than-row"; readonly mlPer24h: MlPer24h; readonly rowMlPer24h: MlPer24h }
  | { readonly code: "far-over-median"; readonly mlPer24h: MlPer24h; readonly medianMlPer24h: MlPer24h };

/** An entry is taken as it stands, or asked about. It is never changed. */
export type Plausibility =
  | { readonly kind: "plausible" }
  | { readonly kind: "ask"; readonly doubts: readonly VolumeDoubt[] };

/** A volume, the time that it ran over, and what the days of the last week brought. */
export type Measured = {
  readonly volume: Microlitres;
  readonly overMs: number;
  readonly week: readonly MlPer24h[];
};

/** Asks about "1000" typed for "100". A volume counts over hours: less than one is taken as one. */
export function plausibility({ volume, overMs, week }: Measured, row: PlausibilityRow): Plausibility {
  const mlPer24h = ratePer24h(volume, Math.max(overMs, HOUR_MS));
  const usual = median(week);
  const doubts: VolumeDoubt[] = [];
  if (mlPer24h > row.overMlPer24h) {
    doubts.push({ code: "more-than-row", mlPer24h, rowMlPer24h: row.overMlPer24h });
  }
  if (usual !== undefined && mlPer24h > row.overTimesMedian * usual && mlPer24h - usual > row.andMoreMl) {
    doubts.push({ code: "far-over-median", mlPer24h, medianMlPer24h: usual });
  }
  return doubts.length === 0 ? { kind: "plausible" } : { kind: "ask", doubts };
}
