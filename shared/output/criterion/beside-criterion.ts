import { addDays } from "#shared/day/day.ts";
import { dayAt } from "#shared/day/instant.ts";
import type { BesideReason } from "#shared/output/criterion/criterion.ts";
import { type AskedCriterion, daysOf } from "#shared/output/criterion/criterion-input.ts";
import { coveredDays } from "#shared/output/criterion/judged-days.ts";
import { plateauOf } from "#shared/output/criterion/plateau.ts";
import { notRemovedBefore } from "#shared/protocol/tract-ages.ts";
import { rowFor } from "#shared/step/dated-steps.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** The tract counts from its latest plausible day: how old it has to be is another row than how little may run. */
function tractBeside({ tube, conditions, age, protocol, zone, now }: AskedCriterion): BesideReason[] {
  const answer = rowFor({ tube, conditions, age, protocol });
  if (answer.found !== "row") return [];
  const days = notRemovedBefore(answer.row, tube.route);
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

/** It goes on draining, and a cause may be active. Of a cavity as one. */
function plateauBeside(asked: AskedCriterion): BesideReason[] {
  const row = asked.protocol.outputRows?.plateau ?? null;
  if (row === null || asked.tube.role !== "collection") return [];
  const plateau = plateauOf(coveredDays(daysOf(asked)), row);
  return plateau === null ? [] : [{ code: "plateau", ...plateau }];
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
