import { besideCriterion } from "#shared/output/criterion/beside-criterion.ts";
import { byVolume } from "#shared/output/criterion/by-volume.ts";
import { cavityOf } from "#shared/output/criterion/cavity.ts";
import { changesOf } from "#shared/output/criterion/changes.ts";
import type {
  Criterion,
  CriterionReason,
  CriterionRow,
  Weighed,
} from "#shared/output/criterion/criterion.ts";
import {
  type AskedCriterion,
  type CriterionInput,
  daysOf,
} from "#shared/output/criterion/criterion-input.ts";
import { type CriterionRows, rowsOf } from "#shared/output/criterion/rows-of.ts";
import { weighAirLeak } from "#shared/output/criterion/weigh-air-leak.ts";
import { weighClinical, weighFilm } from "#shared/output/criterion/weigh-clinical.ts";
import { weighDays } from "#shared/output/criterion/weigh-days.ts";
import { weighSessions } from "#shared/output/criterion/weigh-sessions.ts";
import { noEvidence, together } from "#shared/output/criterion/weighed.ts";
import { shutModes } from "#shared/output/low-day.ts";
import { flushIsOrdered, outputOfTube } from "#shared/output/output-of-tube.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";
import type { Role } from "#shared/tube/vocabulary.ts";

/** The tube's role, or the one that its kind has in any case, where one of them is never judged by volume. */
function neverByVolume({ role, kind }: TubeState): Role | undefined {
  return [role, kindOf(kind).role].find((one) => one !== null && !byVolume.includes(one)) ?? undefined;
}

function doesNotApply({ tube }: CriterionInput): CriterionReason | undefined {
  const role = neverByVolume(tube);
  if (role !== undefined) return { code: "never-by-volume", role };
  if (tube.status !== "in") return { code: "not-in", status: tube.status };
  return shutModes.includes(tube.mode) ? { code: "shut", mode: tube.mode } : undefined;
}

/** What went wrong with one of the tubes, and nobody has looked since: a leak, fever, a block void a low figure. */
const troublesOf = ({ tube, cavity }: AskedCriterion): readonly CriterionReason[] =>
  cavity.draining.flatMap(({ id, number, troubles }) =>
    troubles.map(({ kind }) => ({
      code: "trouble" as const,
      trouble: kind,
      tube: id === tube.id ? null : number,
    })),
  );

/** Whether another drain lies in the same cavity decides whether the sum is looked at. */
function cavityUnknown({ tube, cavity }: AskedCriterion): readonly CriterionReason[] {
  if (tube.role !== "collection" || cavity.maybe.length === 0) return [];
  const tubes = cavity.maybe.map(({ number }) => number).toSorted((a, b) => a - b);
  return [{ code: "cavity-not-recorded", tubes }];
}

function weigh(asked: AskedCriterion, { row, age, patient: rows }: CriterionRows): Weighed {
  const { tube, readings, clinical, zone, now } = asked;
  const own = readings.filter(({ tubeId }) => tubeId === tube.id);
  const patient = { clinical, rows, zone, now };
  const { underMl, running } = row;
  const trouble = { unknown: [...troublesOf(asked), ...cavityUnknown(asked)] };
  switch (row.what) {
    case "net days":
      return together([
        weighDays({ ...daysOf(asked), underMl, running, noOlderHours: age }),
        weighClinical(patient),
        trouble,
      ]);
    case "chest tube":
      return together([
        weighAirLeak({ readings: own, hours: row.noAirLeakHours, now }),
        weighDays({ ...daysOf(asked), underMl, running, noOlderHours: age }),
        weighFilm(patient),
        trouble,
      ]);
    case "sessions":
      return together([
        weighSessions({
          readings: own,
          flushOrdered: flushIsOrdered(tube),
          changes: changesOf(tube, asked.cavity.mates),
          underMl,
          running,
          noOlderHours: age,
          clinical,
          zone,
          now,
        }),
        trouble,
      ]);
  }
}

function verdict({ against, unknown, forIt }: Weighed): Pick<Criterion, "kind" | "because"> {
  if (against.length > 0) return { kind: "not met", because: [...against, ...unknown] };
  if (unknown.length > 0) return { kind: "cannot tell", because: unknown };
  return { kind: "numeric part met", because: forIt };
}

const told = (
  kind: Criterion["kind"],
  reason: CriterionReason,
  row: CriterionRow | null = null,
): Criterion => ({
  kind,
  because: [reason],
  beside: [],
  row,
  evidence: noEvidence,
});

/**
 * The numeric part of a removal review by the clinic's row, keyed on role, mode and kind. Meeting it means only that.
 *
 * `does not apply` stands first: a tube that is not in, is shut, or whose kind is never judged by volume. Without a row nothing can be
 * told. Then what disproves the criterion *however what is not known would come out* is "not met"; anything that is not known, too old or
 * against the figure's meaning is "cannot tell"; only what is left is met. A day without a figure is never a low one.
 */
export function criterionOf(input: CriterionInput): Criterion {
  const outside = doesNotApply(input);
  if (outside !== undefined) return told("does not apply", outside);
  const rows = rowsOf(input);
  if ("lacks" in rows) return told("cannot tell", { code: "no-row", of: rows.lacks });
  const cavity = cavityOf(input.tube, input.tubes);
  const outputs = cavity.draining.map((tube) =>
    outputOfTube(tube, {
      readings: input.readings.filter(({ tubeId }) => tubeId === tube.id),
      zone: input.zone,
      row: input.protocol.output,
      now: input.now,
    }),
  );
  const asked: AskedCriterion = { ...input, cavity, outputs };
  const weighed = weigh(asked, rows);
  return {
    ...verdict(weighed),
    beside: besideCriterion(asked),
    row: rows.row,
    evidence: weighed.evidence,
  };
}
