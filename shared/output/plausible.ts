import { median } from "#shared/output/median.ts";
import { type Microlitres, toMl } from "#shared/output/microlitre.ts";
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

/** How much more it is, in mL, than the usual rate brings in that time: a small volume soon after another is no slip. */
const moreThanUsual = (volume: Microlitres, ms: number, usual: MlPer24h): number =>
  toMl(volume) - (usual * ms) / (24 * HOUR_MS);

/** Asks about "1000" typed for "100". A volume counts over hours: less than one is taken as one. */
export function plausibility({ volume, overMs, week }: Measured, row: PlausibilityRow): Plausibility {
  const ms = Math.max(overMs, HOUR_MS);
  const mlPer24h = ratePer24h(volume, ms);
  const usual = median(week);
  const doubts: VolumeDoubt[] = [];
  if (mlPer24h > row.overMlPer24h) {
    doubts.push({ code: "more-than-row", mlPer24h, rowMlPer24h: row.overMlPer24h });
  }
  const isFarOver =
    usual !== undefined &&
    mlPer24h > row.overTimesMedian * usual &&
    moreThanUsual(volume, ms, usual) > row.andMoreMl;
  if (isFarOver) {
    doubts.push({ code: "far-over-median", mlPer24h, medianMlPer24h: usual });
  }
  return doubts.length === 0 ? { kind: "plausible" } : { kind: "ask", doubts };
}
