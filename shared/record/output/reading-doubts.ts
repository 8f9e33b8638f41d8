import { type Day, daysBetween } from "#shared/day/day.ts";
import { dayAt, type Instant } from "#shared/day/instant.ts";
import { type Microlitres, noVolume, toMl } from "#shared/output/microlitre.ts";
import { netVolume } from "#shared/output/net-volume.ts";
import { orderedFlush } from "#shared/output/ordered-flush.ts";
import { plausibility, type VolumeDoubt } from "#shared/output/plausible.ts";
import { HOUR_MS, type MlPer24h, ratePer24h } from "#shared/output/rate.ts";
import type { Flush, Reading } from "#shared/output/reading.ts";
import type { FormContext } from "#shared/record/form.ts";
import type { ReadingBeside, Stretch } from "#shared/record/output/reading-beside.ts";

/** What may be a slip in a reading. Each is asked beside its field; it stands as typed when the answer is yes. */
export type ReadingDoubt =
  | (VolumeDoubt & { readonly field: "drained" })
  /** A reading that stands speaks of the same time; `from` null where its start is unknown. */
  | {
      readonly code: "overlaps";
      readonly field: "to";
      readonly from: Instant | null;
      readonly to: Instant;
    }
  | { readonly code: "before-tube"; readonly field: "to"; readonly since: Day }
  | { readonly code: "after-tube"; readonly field: "to"; readonly out: Day }
  | {
      readonly code: "flush-over-order";
      readonly field: "flushGiven";
      readonly ul: Microlitres;
      readonly order: string | null;
    };

/** What is typed of a reading so far. */
export type TypedReading = {
  readonly drained?: { readonly volume: Reading["gross"] };
  readonly flushGiven?: Flush;
  readonly flushWithdrawn?: Flush;
  readonly basis?: Reading["basis"];
  readonly from?: Reading["from"];
  readonly to?: Instant;
  readonly procedureAspirate?: boolean;
};

const WEEK = 7;
const SINCE_LAST = "since last emptying";

/** Where a stretch begins, among every end that there is; null where nobody knows. */
function startOf({ from, to }: Stretch, ends: readonly Instant[], placedAt: Instant | null): Instant | null {
  if (from !== SINCE_LAST) return from;
  let last: Instant | null = null;
  for (const end of ends) if (end < to && (last === null || end > last)) last = end;
  return last ?? (placedAt !== null && placedAt < to ? placedAt : null);
}

/** The readings that stand and speak of time that this one speaks of too. */
function overlapsOf(typed: Stretch, { emptied, placedAt }: ReadingBeside): ReadingDoubt[] {
  const ends = [typed.to, ...emptied.map(({ to }) => to)];
  const start = startOf(typed, ends, placedAt);
  return emptied.flatMap((other): ReadingDoubt[] => {
    const from = startOf(other, ends, placedAt);
    const runs = start !== null && from !== null && from < typed.to && start < other.to;
    if (other.aspirate || !(runs || other.to === typed.to)) return [];
    return [{ code: "overlaps", field: "to", from, to: other.to }];
  });
}

/** Before the tube was placed, or after it was out. */
function outsideOf(on: Day, { inSince, outBy }: ReadingBeside): ReadingDoubt[] {
  if (inSince !== null && on < inSince) return [{ code: "before-tube", field: "to", since: inSince }];
  return outBy !== null && on > outBy ? [{ code: "after-tube", field: "to", out: outBy }] : [];
}

/** Irrigation, contrast and other fluids are easily typed as flush: far over what is ordered is asked about, by the clinic's row. */
function flushDoubt({ flushGiven }: TypedReading, { flushOrder, plausible }: ReadingBeside): ReadingDoubt[] {
  if (plausible === null || typeof flushGiven !== "object") return [];
  const ordered = flushOrder === null ? noVolume : orderedFlush(flushOrder);
  const { ul } = flushGiven;
  const isFarOver =
    ul > plausible.overTimesMedian * ordered && toMl(ul) - toMl(ordered) > plausible.andMoreMl;
  return isFarOver ? [{ code: "flush-over-order", field: "flushGiven", ul, order: flushOrder }] : [];
}

/** Net where it can be told, else what was drained; null while neither is typed. */
function volumeOf({ drained, flushGiven, flushWithdrawn, basis }: TypedReading): Microlitres | null {
  if (drained === undefined || drained.volume.certainty === "unknown") return null;
  const facts = {
    gross: drained.volume,
    flushGiven: flushGiven ?? "not recorded",
    flushWithdrawn: flushWithdrawn ?? "none",
    basis: basis ?? "gross",
  };
  const net = netVolume(facts, true);
  return net.kind === "known" ? net.ul : drained.volume.value;
}

const DAY_MS = 24 * HOUR_MS;

/** What it runs over; a start that nobody knows counts as a day before. */
function overMs(typed: Stretch, { emptied, placedAt }: ReadingBeside): number {
  const start = startOf(
    typed,
    emptied.map(({ to }) => to),
    placedAt,
  );
  return start === null || start >= typed.to ? DAY_MS : typed.to - start;
}

/** The rate of what is typed; null while it has no volume or no time. */
export function typedRate(typed: TypedReading, beside: ReadingBeside): MlPer24h | null {
  const { to, from = SINCE_LAST } = typed;
  const volume = volumeOf(typed);
  return to === undefined || volume === null
    ? null
    : ratePer24h(volume, Math.max(overMs({ from, to }, beside), HOUR_MS));
}

/**
 * Everything that is asked of a reading as it is typed: volumes by the clinic's row against the week before it and `others`, rates that are
 * typed beside it; time that another reading speaks of or in which the tube did not lie there; flush far over the order.
 */
export function readingDoubts(
  typed: TypedReading,
  { output, zone }: Pick<FormContext, "output" | "zone">,
  others: readonly MlPer24h[] = [],
): readonly ReadingDoubt[] {
  if (output === undefined) return [];
  const flush = flushDoubt(typed, output);
  const { to, from = SINCE_LAST } = typed;
  if (to === undefined || typed.procedureAspirate === true) return flush;
  const on = dayAt(to, zone);
  const isBefore = (day: Day): boolean => daysBetween(day, on) >= 1 && daysBetween(day, on) <= WEEK;
  const week = output.days.filter(({ day }) => isBefore(day)).map(({ mlPer24h }) => mlPer24h);
  const volume = volumeOf(typed);
  const found =
    volume === null || output.plausible === null
      ? null
      : plausibility(
          { volume, overMs: overMs({ from, to }, output), week: [...week, ...others] },
          output.plausible,
        );
  const volumes = found?.kind === "ask" ? found.doubts : [];
  return [
    ...volumes.map((doubt) => ({ ...doubt, field: "drained" as const })),
    ...outsideOf(on, output),
    ...overlapsOf({ from, to }, output),
    ...flush,
  ];
}
