import { type ClinicCalendar, nextOpenDay } from "#shared/day/clinic-days.ts";
import { addDays, type Day, earlier } from "#shared/day/day.ts";
import { findRow, type RowAnswer } from "#shared/protocol/find-row.ts";
import type { ProtocolRow } from "#shared/protocol/interval-row.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { type Draft, exampleLines, type TubeQuestion, why } from "#shared/step/draft.ts";
import { reviewDrafts, reviewOn } from "#shared/step/review-steps.ts";
import type { Why } from "#shared/step/step.ts";
import { tractTooYoung } from "#shared/step/tract-lines.ts";
import { isFirstCatheter } from "#shared/tube/clocks.ts";
import { isTrue } from "#shared/tube/open-record.ts";
import type { Conditions } from "#shared/tube/payloads.ts";
import type { Clock, TubeState } from "#shared/tube/state.ts";
import type { Factor } from "#shared/tube/vocabulary.ts";

/** Which shorter rows this patient and tube ask for. An unknown factor asks for none, and the screen shows it as unknown. */
export function factorsOf(tube: TubeState, conditions: Conditions): Factor[] {
  const factors: Factor[] = [];
  if (isTrue(conditions.pregnancy)) factors.push("pregnancy");
  if (isTrue(conditions.stoneFormer)) factors.push("stone former");
  if (isTrue(tube.cancerObstruction)) factors.push("cancer obstruction");
  return factors;
}

export const rowFor = ({
  tube,
  conditions,
  age,
  protocol,
}: Pick<TubeQuestion, "tube" | "conditions" | "age" | "protocol">): RowAnswer =>
  findRow(protocol, {
    kind: tube.kind,
    factors: factorsOf(tube, conditions),
    under18: age === "under 18",
    firstCatheter: isFirstCatheter(tube),
  });

type Target = { readonly target: Day | null; readonly lines: readonly Why[] };

const plus = (from: Day | null, days: number | null): Day | null =>
  from === null || days === null ? null : addDays(from, days);

/** The lines that say where counting starts; the earliest plausible day, so that an error falls on the careful side. */
export function startLines({ since, eventId }: Clock): Why[] {
  if (since.precision === "unknown") return [why("date-unknown", {}, eventId)];
  if (since.precision === "day") return [why("counted-from", { day: since.earliest }, eventId)];
  return [why("counted-from-span", { earliest: since.earliest, latest: since.latest }, eventId)];
}

function rowLines(row: ProtocolRow, protocol: Protocol): Why[] {
  const { id, earliest, target, latest, source } = row;
  const lines = [why("row", { row: id, version: protocol.version, earliest, target, latest, source })];
  if (row.note !== null) lines.push(why("row-note", { note: row.note }));
  if (row.factor !== null) lines.push(why("factor", { factor: row.factor }));
  return [...lines, ...exampleLines(protocol)];
}

/**
 * The review stands 14 days (by row) from the last check or review or from the start, whichever is later known; on the day that the last
 * review set, where it set one and nobody checked the tube since.
 */
function reviewTarget({ catheter, checked, reviewed }: TubeState, row: ProtocolRow): Target {
  const checkedOn = checked?.when.earliest ?? null;
  const reviewedOn = reviewed?.when.earliest ?? null;
  if (reviewed !== null && reviewedOn !== null && (checkedOn === null || checkedOn <= reviewedOn)) {
    const { next, eventId } = reviewed;
    return next === null
      ? { target: plus(reviewedOn, row.target), lines: [why("reviewed", { day: reviewedOn }, eventId)] }
      : { target: next, lines: [reviewOn(next, eventId)] };
  }
  if (checked === null || checkedOn === null)
    return { target: plus(catheter.since.earliest, row.target), lines: [] };
  const line = why("counted-from-check", { day: checkedOn }, checked.eventId);
  return { target: plus(checkedOn, row.target), lines: [line] };
}

/** A target never lies after the latest date. */
const within = (target: Day | null, latest: Day | null): Day | null =>
  target === null || latest === null ? target : earlier(target, latest);

function rowDraft({ tube, protocol, age }: TubeQuestion, row: ProtocolRow): Draft | null {
  const start = tube.catheter.since.earliest;
  if (start === null) return null;
  const unsure = age === "unknown" ? [why("age-unknown")] : [];
  const lines = [...startLines(tube.catheter), ...rowLines(row, protocol), ...unsure];
  const latest = plus(start, row.latest);
  if (row.asks === "exchange") {
    const window = { earliest: plus(start, row.earliest), target: plus(start, row.target), latest };
    return { kind: "exchange", window, why: lines };
  }
  if (row.asks === "review") {
    const review = reviewTarget(tube, row);
    return {
      kind: "review",
      window: { earliest: null, target: within(review.target, latest), latest },
      why: [...lines, ...review.lines],
    };
  }
  const window = { earliest: null, target: within(tube.catheter.recordedOn, latest), latest };
  return { kind: "remove or exchange", window, why: [...lines, why("operator-date-missing")] };
}

/** The row's earliest, where an open day lies between it and the plan's day: a plan is never put off for the row's earliest. */
function earliestUnder(by: Day, earliest: Day | null, calendar: ClinicCalendar): Day | null {
  const open = earliest === null ? null : nextOpenDay(earliest, calendar);
  return open !== null && open <= by ? earliest : null;
}

type Beneath = {
  readonly row: Draft | null;
  readonly noRow: readonly Why[];
  readonly of: ProtocolRow | null;
};

/** The operator's plan stands above the row: its day is the target, and the row's latest stays unless the plan passes it. */
function planDraft(question: TubeQuestion, { row, noRow, of }: Beneath): Draft | null {
  const { tube, calendar } = question;
  const { plan } = tube;
  if (plan === null) return null;
  const lines = [...(row?.why ?? noRow).filter((line) => line.code !== "operator-date-missing")];
  lines.push(why("plan", { act: plan.act, by: plan.by, byWhom: plan.byWhom }, plan.eventId));
  if (plan.reason !== null) lines.push(why("plan-reason", { reason: plan.reason }, plan.eventId));
  const rowLatest = row?.window.latest ?? null;
  const passes = rowLatest !== null && plan.by > rowLatest;
  if (passes) lines.push(why("plan-past-row-latest", { by: plan.by, latest: rowLatest }, plan.eventId));
  const hard = plus(tube.catheter.since.earliest, of?.hardLatest ?? null);
  if (hard !== null && plan.by > hard)
    lines.push(why("hard-latest", { by: plan.by, latest: hard }, plan.eventId));
  lines.push(...tractTooYoung(question, of, { act: plan.act, on: plan.by, eventId: plan.eventId }));
  const window = {
    earliest: earliestUnder(plan.by, row?.window.earliest ?? null, calendar),
    target: plan.by,
    latest: passes || rowLatest === null ? plan.by : rowLatest,
  };
  return { kind: plan.act, window, why: lines };
}

const missingRow: Readonly<Record<Exclude<RowAnswer["found"], "row">, Why["code"]>> = {
  "no row": "no-row",
  "no example for a child": "no-example-for-child",
};

/**
 * The dated steps of a tube that is in: what its row asks, what the operator's plan asks, and what stands in for a date that
 * cannot be told. Never empty.
 */
export function datedDrafts(question: TubeQuestion): Draft[] {
  const { tube } = question;
  const answer = rowFor(question);
  const now = { earliest: null, target: tube.catheter.recordedOn, latest: null };
  const noRow = answer.found === "row" ? [] : [why(missingRow[answer.found], { kind: tube.kind })];
  const row = answer.found === "row" ? rowDraft(question, answer.row) : null;
  const of = answer.found === "row" ? answer.row : null;
  const plan = planDraft(question, { row, noRow, of });
  const drafts: Draft[] = [];
  if (tube.catheter.since.precision !== "day")
    drafts.push({ kind: "assess the date", window: now, why: startLines(tube.catheter) });
  if (plan !== null) drafts.push(plan);
  // A plan to review does not lift the row's exchange; a plan to exchange or remove takes its place.
  const besidePlan = row?.kind === "review" || tube.plan?.act === "review";
  const standsBeside = plan === null || (plan.kind !== row?.kind && besidePlan);
  if (row !== null && standsBeside) drafts.push(row);
  if (answer.found !== "row" && plan === null) drafts.push({ kind: "no row", window: now, why: noRow });
  drafts.push(...reviewDrafts(question, row?.kind === "review"));
  return drafts;
}
