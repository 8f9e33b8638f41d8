import type { Person } from "#shared/access/person.ts";
import { type StaffRole, staffRoles } from "#shared/access/roles.ts";

/** Whom a line of the table may name: a role, or the physicians who are approvers. */
export type Actor = StaffRole | "approver";

const everyone = staffRoles;

/** What each may do: one line a procedure of the API. What stands in no line is refused. */
export const access = {
  "draft.drop": everyone,
  "draft.load": everyone,
  "draft.save": everyone,
  "list.exchanges": everyone,
  "list.today": everyone,
  "list.whoSawWhat": ["lead"],
  "patient.find": everyone,
  "patient.view": everyone,
  "staff.list": everyone,
  "tube.output": everyone,
  "tube.view": everyone,
} as const satisfies Record<string, readonly Actor[]>;

export type Procedure = keyof typeof access;

export const isProcedure = (path: string): path is Procedure => Object.hasOwn(access, path);

/** Whether this person may call that procedure. Screens ask, to offer only what may be done; the API asks again, always. */
export function may(
  { role, isApprover }: Pick<Person, "role" | "isApprover">,
  procedure: Procedure,
): boolean {
  const actors: readonly Actor[] = access[procedure];
  return actors.includes(role) || (isApprover && actors.includes("approver"));
}
