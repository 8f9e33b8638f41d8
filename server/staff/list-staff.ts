import { allStaff } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import type { Person } from "#shared/access/person.ts";

export type StaffLine = Person & { readonly isOpen: boolean };

/** Everyone who has or had an account, by name. */
export const listStaff = (db: Database): readonly StaffLine[] =>
  allStaff(db).map(({ id, userName, fullName, role, isApprover, closedAt }) => ({
    id,
    userName,
    fullName,
    role,
    isApprover,
    isOpen: closedAt === null,
  }));
