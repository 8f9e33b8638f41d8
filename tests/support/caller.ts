import type { Database } from "#db/sqlite.ts";
import type { Context } from "#server/api/context.ts";
import { createCaller } from "#server/api/router.ts";
import type { Person } from "#shared/access/person.ts";
import { instant } from "#shared/day/instant.ts";
import { SEEDED_AT } from "#tests/support/database.ts";

const ends = instant(SEEDED_AT + 3_600_000);

/** What procedures get when this person asks; null is nobody. */
export const contextOf = (db: Database, staff: Person | null): Context => ({
  db,
  staff,
  session:
    staff === null
      ? null
      : { tokenHash: "", person: staff, lastSeenAt: SEEDED_AT, idleEndsAt: ends, endsAt: ends },
  sentToken: false,
});

/** Calls procedures as this person, through all checks: `callerAs(db, people.nurse).staff.list()`. */
export const callerAs = (db: Database, staff: Person | null) => createCaller(contextOf(db, staff));
