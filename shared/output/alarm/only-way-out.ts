import type { Found } from "#shared/clinical/clinical-state.ts";
import { endOfDay, type Instant, type Zone } from "#shared/day/instant.ts";
import { type DrySpell, drainedSome, drySpells } from "#shared/output/alarm/dry-spells.ts";
import { drainsNow, type Evidence, evidenceOf } from "#shared/output/alarm/evidence.ts";
import { HOUR_MS } from "#shared/output/rate.ts";
import { instantOf } from "#shared/output/segment-cuts.ts";
import type { OutputRows } from "#shared/protocol/output-rows.ts";
import { known } from "#shared/tube/certainty.ts";
import { isTrue } from "#shared/tube/open-record.ts";

/** Why nothing out of this tube is no urine at all. */
export const onlyWays = [
  "transplant kidney",
  "single kidney",
  "nothing voided",
  "nothing voided, other tubes dry",
  "other tubes dry",
] as const;

export type OnlyWay = {
  /** Null where urine is known to come by another way, or nobody can tell. */
  readonly because: (typeof onlyWays)[number] | null;
  /** Whether urine comes by another way is not known. */
  readonly notKnown: boolean;
};

type DryRow = OutputRows["dry"][number];

/** One other way of urine while the tube was dry. */
type Way = "urine" | "none" | "not known";

/** The latest that something can have been found: without a clock time at the end of its day. */
const latestAt = (found: Found<"voidedVolume">, zone: Zone): Instant | null =>
  found.time !== null ? instantOf(found, zone) : found.when.latest && endOfDay(found.when.latest, zone);

/** From when on the tube was dry, and until when: the end of its next emptying that brought something; null while none has. */
type DryTime = { readonly from: Instant; readonly over: Instant | null };

const dryTime = ({ intervals }: Evidence, { from, to }: DrySpell): DryTime => ({
  from,
  over: intervals.find((one) => one.from >= to && drainedSome(one))?.to ?? null,
});

const isBeforeItRan = (at: Instant, { over }: DryTime): boolean => over === null || at <= over;

/**
 * What was voided, found at or after the tube ran dry and before it ran again. Without a clock time nothing voided may have been found
 * since, and something may have been found before: both err to the careful side.
 */
function voided({ clinical, zone }: Evidence, dry: DryTime): Way {
  const found = clinical.voidedVolume;
  const ml = found && known(found.fact)?.value;
  if (found === undefined || ml === undefined) return "not known";
  const [earliest, latest] = [instantOf(found, zone), latestAt(found, zone)];
  if (earliest === null || latest === null || !isBeforeItRan(earliest, dry)) return "not known";
  if (ml > 0) return earliest >= dry.from ? "urine" : "not known";
  return latest >= dry.from ? "none" : "not known";
}

/** Another urinary tube since then. What it brought counts only where its reading began since; dry is by the same row. */
function outOf(other: Evidence, row: DryRow, dry: DryTime): Way {
  const since = other.intervals.filter(({ from }) => from >= dry.from && isBeforeItRan(from, dry));
  if (since.some(drainedSome)) return "urine";
  const isDry = drySpells(other).some(
    ({ from, to }) => to - from >= row.hours * HOUR_MS && to > dry.from && isBeforeItRan(from, dry),
  );
  return isDry ? "none" : "not known";
}

/** The patient's other urinary tubes that are in and open. */
const otherTubes = (evidence: Evidence, row: DryRow, dry: DryTime): readonly Way[] =>
  evidence
    .others()
    .filter(({ tube }) => tube.status === "in" && row.kinds.includes(tube.kind) && drainsNow({ tube }))
    .map((other) => outOf(evidenceOf({ ...evidence, ...other }, evidence.rows), row, dry));

/**
 * Whether nothing out of this tube is no urine by any route: one kidney or a transplant, nothing voided since it ran dry, or every
 * other urinary tube dry as well. Urine that is known to come by one way, and nothing else, says no.
 */
export function onlyWayOut(evidence: Evidence, row: DryRow, spell: DrySpell): OnlyWay {
  const { tube, conditions } = evidence;
  if (isTrue(conditions.transplantKidney) || known(tube.side) === "transplant")
    return { because: "transplant kidney", notKnown: false };
  if (isTrue(conditions.singleKidney)) return { because: "single kidney", notKnown: false };
  const dry = dryTime(evidence, spell);
  const bladder = voided(evidence, dry);
  const tubes = otherTubes(evidence, row, dry);
  if (bladder === "urine" || tubes.includes("urine")) return { because: null, notKnown: false };
  const allDry = tubes.length > 0 && tubes.every((way) => way === "none");
  if (bladder === "none")
    return { because: allDry ? "nothing voided, other tubes dry" : "nothing voided", notKnown: false };
  return { because: allDry ? "other tubes dry" : null, notKnown: !allDry };
}
