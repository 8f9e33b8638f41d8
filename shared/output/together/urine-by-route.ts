import type { VoidedFact } from "#shared/clinical/voided-by-day.ts";
import { addDays, type Day } from "#shared/day/day.ts";
import { dayAt, endOfDay, type Instant, startOfDay, type Zone } from "#shared/day/instant.ts";
import { shutModes } from "#shared/output/low-day.ts";
import { sum } from "#shared/output/microlitre.ts";
import type { DayRemark, IncompleteReason, NetDay } from "#shared/output/net-day.ts";
import { type MlPer24h, ratePer24h } from "#shared/output/rate.ts";
import { segmentChanges } from "#shared/output/segment-cuts.ts";
import { known } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** Whether a tube is a way out of urine: it drains a kidney or the bladder to the outside. */
export function drainsUrine({ kind }: Pick<TubeState, "kind">): boolean {
  const { organ, outside } = kindOf(kind);
  return outside && (organ === "kidney" || organ === "bladder");
}

type Told = {
  readonly kind: "known";
  readonly mlPer24h: MlPer24h;
  readonly remarks: readonly DayRemark[];
};

/** What came by one tube in one day. A tube that is shut, or was not in, brought none; what is missing is not zero. */
export type RouteFigure =
  | Told
  | { readonly kind: "shut" }
  | { readonly kind: "not in" }
  | { readonly kind: "cannot tell"; readonly because: readonly IncompleteReason[] };

/** What was voided: `cannot tell` where somebody noted that it is not known, `missing` where nobody noted anything. */
export type VoidedFigure = Told | { readonly kind: "cannot tell" | "missing" };

/** All urine of a day; where it cannot be told, the tubes by id and the voiding that are missing for it. */
export type UrineSum =
  | { readonly kind: "known"; readonly mlPer24h: MlPer24h }
  | { readonly kind: "cannot tell"; readonly missing: readonly string[] };

export const VOIDED = "voided";

export type UrineDay = {
  readonly day: Day;
  readonly routes: readonly { readonly tubeId: string; readonly figure: RouteFigure }[];
  readonly voided: VoidedFigure;
  readonly sum: UrineSum;
  readonly remarks: readonly DayRemark[];
};

type Lying = Pick<TubeState, "id" | "mode" | "story" | "ending">;
export type UrineTube = { readonly tube: Lying; readonly days: readonly NetDay[] };

const unique = <T>(values: readonly T[]): readonly T[] => [...new Set(values)];

/** Known to lie in on no hour of that day. */
function isNotIn({ story, ending }: Lying, day: Day): boolean {
  const placed = story[0]?.when.earliest ?? null;
  const out = ending?.when.latest ?? null;
  return (placed !== null && day < placed) || (out !== null && day > out);
}

/** Shut since before that day began, by an entry that says so. */
function isShut({ mode, story }: Lying, day: Day, zone: Zone): boolean {
  const last = segmentChanges(story, zone).at(-1);
  const shutting = last?.kind === "capped" || last?.kind === "clamp trial started";
  return shutModes.includes(mode) && shutting && last.at <= startOfDay(day, zone);
}

/** A day that a change cut in two is whole where both parts are measured: all of its urine is asked for, not one size's. */
function measuredOn(day: Day, parts: readonly NetDay[], zone: Zone): RouteFigure {
  const [start, end] = [startOfDay(day, zone), endOfDay(day, zone)];
  const isWhole = parts.reduce((ms, { from, to }) => ms + to - from, 0) === end - start;
  const because = unique(parts.flatMap((part) => part.because)).filter(
    (reason) => !(isWhole && reason === "part-of-a-day"),
  );
  const volumes = parts.flatMap(({ net }) => (net.kind === "known" ? [net.ul] : []));
  if (parts.length === 0) return { kind: "cannot tell", because: ["no-reading"] };
  if (because.length > 0 || volumes.length < parts.length) return { kind: "cannot tell", because };
  const remarks = unique(parts.flatMap((part) => part.remarks));
  return { kind: "known", mlPer24h: ratePer24h(sum(volumes), end - start), remarks };
}

function figureOn(day: Day, { tube, days }: UrineTube, zone: Zone): RouteFigure {
  if (isNotIn(tube, day)) return { kind: "not in" };
  const parts = days.filter((part) => part.day === day);
  const isLogged = parts.some(({ readings }) => readings.length > 0);
  return !isLogged && isShut(tube, day, zone) ? { kind: "shut" } : measuredOn(day, parts, zone);
}

function voidedFigure(fact: VoidedFact | undefined): VoidedFigure {
  if (fact === undefined) return { kind: "missing" };
  const value = known(fact)?.value;
  if (value === undefined) return { kind: "cannot tell" };
  const remarks: readonly DayRemark[] =
    fact.certainty === "estimated" || fact.certainty === "reported" ? [fact.certainty] : [];
  return { kind: "known", mlPer24h: value as MlPer24h, remarks };
}

function sumOf(routes: UrineDay["routes"], voided: VoidedFigure): UrineSum {
  const all = [...routes, { tubeId: VOIDED, figure: voided }];
  const missing = all.flatMap(({ tubeId, figure: { kind } }) =>
    kind === "cannot tell" || kind === "missing" ? [tubeId] : [],
  );
  if (missing.length > 0) return { kind: "cannot tell", missing };
  const rates: readonly number[] = all.map(({ figure }) => (figure.kind === "known" ? figure.mlPer24h : 0));
  return { kind: "known", mlPer24h: rates.reduce((total, rate) => total + rate, 0) as MlPer24h };
}

export type UrineInput = {
  readonly tubes: readonly UrineTube[];
  readonly voided: ReadonlyMap<Day, VoidedFact>;
  readonly zone: Zone;
  readonly now: Instant;
};

/**
 * Urine by every route and its sum, the last ended days of the clinic, newest first, at most so many: none before the first day that was
 * logged. A missing route makes the sum unknown, never smaller.
 */
export function urineByRoute({ tubes, voided, zone, now }: UrineInput, most: number): readonly UrineDay[] {
  const [first] = [
    ...tubes.flatMap(({ days }) => days.slice(0, 1).map(({ day }) => day)),
    ...voided.keys(),
  ].toSorted();
  if (first === undefined) return [];
  const today = dayAt(now, zone);
  return Array.from({ length: most }, (_, index) => addDays(today, -1 - index))
    .filter((day) => day >= first)
    .map((day) => {
      const routes = tubes.map((one) => ({ tubeId: one.tube.id, figure: figureOn(day, one, zone) }));
      const noted = voidedFigure(voided.get(day));
      const told = [...routes.map(({ figure }) => figure), noted];
      const remarks = unique(told.flatMap((figure) => (figure.kind === "known" ? figure.remarks : [])));
      return { day, routes, voided: noted, sum: sumOf(routes, noted), remarks };
    });
}
