import { and, asc, eq, gt, gte, inArray, isNotNull, lt, lte, or, sql } from "drizzle-orm";
import { prepared } from "#db/prepared.ts";
import { openSteps, tubes } from "#db/schema/projections.ts";
import type { Database } from "#db/sqlite.ts";
import type { Day } from "#shared/day/day.ts";
import type { Instant } from "#shared/day/instant.ts";
import { byVolume } from "#shared/output/criterion/by-volume.ts";
import { standIns } from "#shared/review/queue-part.ts";
import { listRank } from "#shared/step/list-rank.ts";
import { RULES_VERSION } from "#shared/step/step.ts";

const { id, kind, dueOn, rank, tubeId, why } = openSteps;

/** Somebody asked for it. */
const wasAsked = sql<0 | 1>`exists (select 1 from json_each(${why}) where value ->> 'code' = 'review-asked')`;

const today = sql.placeholder("today");

/** What rows of older rules ask for was not computed: each is looked at. */
const outputAsksNow = or(
  gte(tubes.metUntil, sql.placeholder("now")),
  isNotNull(tubes.plateauSince),
  lt(tubes.rulesVersion, RULES_VERSION),
);

/** The plus keeps the planner, which has no statistics, from walking all steps of a kind for those of a few tubes. */
const standsIn = (orm: Database["orm"]) =>
  and(
    sql`+${rank} = ${listRank.clock}`,
    inArray(sql`+${kind}`, [...standIns]),
    inArray(
      tubeId,
      orm
        .select({ id: tubes.id })
        .from(tubes)
        .where(inArray(tubes.role, [...byVolume])),
    ),
  );

/** Each part by an index of its own: together in one condition they would be looked for in every step of the clinic. */
const idsOf = (orm: Database["orm"]) => {
  const ids = orm.select({ id }).from(openSteps).$dynamic();
  const due = orm
    .select({ id })
    .from(openSteps)
    .where(and(eq(kind, "review"), lte(dueOn, today)));
  const asked = orm
    .select({ id })
    .from(openSteps)
    .where(and(eq(kind, "review"), gt(dueOn, today), wasAsked));
  const asking = orm.select({ id: tubes.id }).from(tubes).where(outputAsksNow);
  const byOutput = orm
    .select({ id })
    .from(openSteps)
    .where(and(inArray(tubeId, asking), or(sql`+${kind} = 'review'`, standsIn(orm))));
  return ids.where(eq(kind, "alarm")).unionAll(due).unionAll(asked).unionAll(byOutput);
};

const waiting = prepared((orm) =>
  orm
    .select({
      id,
      kind,
      dueOn,
      tubeId,
      wasAsked,
      metUntil: tubes.metUntil,
      plateauSince: tubes.plateauSince,
      rulesVersion: tubes.rulesVersion,
    })
    .from(openSteps)
    .leftJoin(tubes, eq(tubes.id, tubeId))
    .where(inArray(id, idsOf(orm)))
    .orderBy(asc(dueOn), asc(id))
    .prepare(),
);

/** A step that may wait for a physician, with what its place in the queue hangs on. */
export type ReviewStep = ReturnType<ReturnType<typeof waiting>["all"]>[number];

/** Every alarm, every review that is due or was asked for, and what the output of its tube may ask to look at before its day; by due day. */
export const reviewSteps = (
  db: Database,
  at: { readonly now: Instant; readonly today: Day },
): readonly ReviewStep[] => waiting(db).all(at);
