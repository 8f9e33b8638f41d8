import { addDays } from "#shared/day/day.ts";
import { dayAt } from "#shared/day/instant.ts";
import type { BesideReason } from "#shared/output/criterion/criterion.ts";
import type { AskedCriterion } from "#shared/output/criterion/criterion-input.ts";
import { tractAges } from "#shared/protocol/tract-ages.ts";
import { rowFor } from "#shared/step/dated-steps.ts";
import { slowToHeal } from "#shared/tube/slow-to-heal.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** The tract counts from its latest plausible day: how old it has to be is another row than how little may run. */
function tractBeside({ tube, conditions, age, protocol, zone, now }: AskedCriterion): BesideReason[] {
  const answer = rowFor({ tube, conditions, age, protocol });
  if (answer.found !== "row") return [];
  const slow = slowToHeal(conditions).yes.length > 0;
  const { notRemovedBefore: days } = tractAges(answer.row, { route: tube.route, slowToHeal: slow });
  if (days === null) return [];
  const since = tube.tract.since.latest ?? tube.tractBy;
  if (since === null) return [{ code: "tract-age-unknown", days }];
  const until = addDays(since, days);
  return dayAt(now, zone) >= until ? [] : [{ code: "tract-too-young", until, days }];
}

const numbersOf = (tubes: readonly TubeState[]): readonly number[] =>
  tubes.map(({ number }) => number).toSorted((a, b) => a - b);

function cavityBeside({ cavity }: AskedCriterion): BesideReason[] {
  const reasons: BesideReason[] = [];
  if (cavity.draining.length > 1) reasons.push({ code: "cavity-sum", tubes: numbersOf(cavity.draining) });
  if (cavity.shut.length > 0) reasons.push({ code: "cavity-shut", tubes: numbersOf(cavity.shut) });
  return reasons;
}

/** Over the row on so many of the last covered days: it has stopped falling, and a cause may be active. */
function plateauBeside({ tube, outputs, protocol }: AskedCriterion): BesideReason[] {
  const row = protocol.outputRows?.plateau ?? null;
  if (row === null || tube.role !== "collection") return [];
  const covered = (outputs[0]?.days ?? []).filter(({ complete }) => complete).slice(-row.ofLast);
  const over = covered.filter(({ net }) => net.kind === "known" && net.mlPer24h > row.overMlPer24h).length;
  return over < row.days
    ? []
    : [{ code: "plateau", days: over, ofLast: covered.length, overMl: row.overMlPer24h }];
}

/** Readings that count in no day: with what they hold the figures may be others. */
function unplacedBeside({ outputs }: AskedCriterion): BesideReason[] {
  const count = new Set(
    outputs.flatMap(({ problems }) =>
      problems.filter(({ code }) => code !== "overlap").flatMap(({ readings }) => readings),
    ),
  ).size;
  return count === 0 ? [] : [{ code: "readings-not-placed", count }];
}

/** What is told beside a verdict: it changes none. */
export const besideCriterion = (asked: AskedCriterion): readonly BesideReason[] => [
  ...cavityBeside(asked),
  ...tractBeside(asked),
  ...plateauBeside(asked),
  ...unplacedBeside(asked),
];
