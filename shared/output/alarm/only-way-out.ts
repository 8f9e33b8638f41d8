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

/** Up to when a finding may speak of a dry stretch: the next emptying of the tube that brought something. */
const overBy = ({ intervals }: Evidence, { to }: DrySpell): Instant | null =>
  intervals.find((one) => one.from >= to && drainedSome(one))?.to ?? null;

/**
 * What was voided, found at or after the tube ran dry and before it ran again. Without a clock time nothing voided may have been found
 * since, and something may have been found before: both err to the careful side.
 */
function voided(evidence: Evidence, spell: DrySpell): Way {
  const { clinical, zone } = evidence;
  const found = clinical.voidedVolume;
  const ml = found && known(found.fact)?.value;
  if (found === undefined || ml === undefined) return "not known";
  const [earliest, latest, end] = [instantOf(found, zone), latestAt(found, zone), overBy(evidence, spell)];
  if (earliest === null || latest === null || (end !== null && earliest > end)) return "not known";
  if (ml > 0) return earliest >= spell.from ? "urine" : "not known";
  return latest >= spell.from ? "none" : "not known";
}

/** Another urinary tube meanwhile. What it brought counts as since then only where its reading began since then. */
function outOf(other: Evidence, row: DryRow, { from, to }: DrySpell): Way {
  const since = other.intervals.filter((one) => one.from >= from && one.from < to);
  if (since.some(drainedSome)) return "urine";
  const dry = drySpells(other).some(
    (spell) => spell.to - spell.from >= row.hours * HOUR_MS && spell.from < to && spell.to > from,
  );
  return dry ? "none" : "not known";
}

/** The patient's other urinary tubes that are in and open. */
const otherTubes = (evidence: Evidence, row: DryRow, spell: DrySpell): readonly Way[] =>
  evidence
    .others()
    .filter(({ tube }) => tube.status === "in" && row.kinds.includes(tube.kind) && drainsNow({ tube }))
    .map((other) => outOf(evidenceOf({ ...evidence, ...other }, evidence.rows), row, spell));

/**
 * Whether nothing out of this tube is no urine by any route: one kidney or a transplant, nothing voided since it ran dry, or every
 * other urinary tube dry as well. Urine that is known to come by one way, and nothing else, says no.
 */
export function onlyWayOut(evidence: Evidence, row: DryRow, spell: DrySpell): OnlyWay {
  const { tube, conditions } = evidence;
  if (isTrue(conditions.transplantKidney) || known(tube.side) === "transplant")
    return { because: "transplant kidney", notKnown: false };
  if (isTrue(conditions.singleKidney)) return { because: "single kidney", notKnown: false };
  const bladder = voided(evidence, spell);
  const tubes = otherTubes(evidence, row, spell);
  if (bladder === "urine" || tubes.includes("urine")) return { because: null, notKnown: false };
  const allDry = tubes.length > 0 && tubes.every((way) => way === "none");
  if (bladder === "none")
    return { because: allDry ? "nothing voided, other tubes dry" : "nothing voided", notKnown: false };
  return { because: allDry ? "other tubes dry" : null, notKnown: !allDry };
}
