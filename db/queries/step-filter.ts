import { and, eq, inArray, isNotNull, isNull, ne, notInArray, or, type SQL, sql } from "drizzle-orm";
import { patients } from "#db/schema/patients.ts";
import { nextVisits, openSteps, tubes } from "#db/schema/projections.ts";
import type { Database } from "#db/sqlite.ts";
import { type ListFilter, UNKNOWN } from "#shared/record/list-filter.ts";

type Orm = Database["orm"];

/** The service that a patient's contact names; written as the index on it is, so that it is used. */
export const serviceOf = sql<string | null>`json_extract(${patients.contact}, '$.responsibleService')`;

function tubesAskedFor({ kind, side, role }: ListFilter): SQL | undefined {
  return and(
    kind === null ? undefined : eq(tubes.kind, kind),
    side === null ? undefined : side === UNKNOWN ? isNull(tubes.side) : eq(tubes.side, side),
    role === null ? undefined : eq(tubes.role, role),
  );
}

/** Steps of such a tube. A step of the whole record concerns each tube of it that has not ended. */
function isOfTubes(orm: Orm, filter: ListFilter): SQL | undefined {
  const asked = tubesAskedFor(filter);
  if (asked === undefined) return undefined;
  const ids = orm.select({ id: tubes.id }).from(tubes).where(asked);
  const holders = orm
    .select({ id: tubes.patientId })
    .from(tubes)
    .where(and(asked, ne(tubes.status, "ended")));
  return or(
    inArray(openSteps.tubeId, ids),
    and(isNull(openSteps.tubeId), inArray(openSteps.patientId, holders)),
  );
}

/** As `ownerOn` says who has a step on a day: from its physician's day on, a physician. */
function isWith(owner: ListFilter["owner"]): SQL | undefined {
  if (owner === null) return undefined;
  const withPhysician = sql`(${openSteps.physicianOn} is not null and ${openSteps.physicianOn} <= ${sql.placeholder("today")})`;
  if ("role" in owner)
    return sql`case when ${withPhysician} then 'physician' else ${openSteps.ownerRole} end = ${owner.role}`;
  return and(
    eq(openSteps.ownerStaffId, owner.staffId),
    or(eq(openSteps.ownerRole, "physician"), sql`not ${withPhysician}`),
  );
}

function isOfService(orm: Orm, service: ListFilter["service"]): SQL | undefined {
  if (service === null) return undefined;
  const ids = orm.select({ id: patients.id }).from(patients);
  return service === UNKNOWN
    ? notInArray(openSteps.patientId, ids.where(isNotNull(serviceOf)))
    : inArray(openSteps.patientId, ids.where(inArray(serviceOf, [...service])));
}

/**
 * Whether the step's tube has a visit to come. A step of the whole record has one where any tube of it has, and none where a tube that has
 * not ended has none, or it holds no such tube: it may stand under both and under neither it never falls out.
 */
function isBooked(orm: Orm, visit: ListFilter["visit"]): SQL | undefined {
  if (visit === null) return undefined;
  const booked = orm.select({ id: nextVisits.tubeId }).from(nextVisits);
  const holders = orm.select({ id: nextVisits.patientId }).from(nextVisits);
  if (visit === "with")
    return or(
      inArray(openSteps.tubeId, booked),
      and(isNull(openSteps.tubeId), inArray(openSteps.patientId, holders)),
    );
  const waiting = orm
    .select({ id: tubes.patientId })
    .from(tubes)
    .where(and(ne(tubes.status, "ended"), notInArray(tubes.id, booked)));
  return or(
    and(isNotNull(openSteps.tubeId), notInArray(openSteps.tubeId, booked)),
    and(
      isNull(openSteps.tubeId),
      or(notInArray(openSteps.patientId, holders), inArray(openSteps.patientId, waiting)),
    ),
  );
}

/** What a filter asks of a step; nothing where it asks for everything. Asks for the placeholder `today`. */
export const isWithin = (orm: Orm, filter: ListFilter): SQL | undefined =>
  and(
    isOfTubes(orm, filter),
    isWith(filter.owner),
    isOfService(orm, filter.service),
    isBooked(orm, filter.visit),
  );
