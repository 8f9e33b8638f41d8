import type { Person } from "#shared/access/person.ts";
import type { StaffRole } from "#shared/access/roles.ts";

export const roleNames = {
  nurse: "scheduling nurse",
  caller: "caller",
  physician: "physician",
  lead: "lead",
} satisfies Record<StaffRole, string>;

/** "physician, approver". */
export const roleWords = ({ role, isApprover }: Pick<Person, "role" | "isApprover">): string =>
  isApprover ? `${roleNames[role]}, approver` : roleNames[role];
