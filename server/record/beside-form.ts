import { clinicOf } from "#db/queries/clinic.ts";
import { allStaff } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { shelfOf } from "#server/shelf/shelf-of.ts";
import { dayAt } from "#shared/day/instant.ts";
import type { FormContext } from "#shared/record/form.ts";

/** What any form is read beside at this moment, apart from its tube: the clinic's clock, who can take a step by name, and the shelf. */
export function besideForm(db: Database): Omit<FormContext, "tube" | "tubes" | "opens"> {
  const { zone } = clinicOf(db);
  const at = now(db);
  const staff = allStaff(db)
    .filter(({ closedAt }) => closedAt === null)
    .map(({ id, fullName, role }) => ({ id, fullName, role }));
  return { today: dayAt(at, zone), now: at, zone, staff, shelf: shelfOf(db) };
}
