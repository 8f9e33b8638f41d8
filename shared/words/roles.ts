import type { Person } from "#shared/access/person.ts";
import type { StaffRole } from "#shared/access/roles.ts";

const words = {
  nurse: "scheduling nurse",
  caller: "caller",
  physician: "physician",
  lead: "lead",
} satisfies Record<StaffRole, string>;

/** "physician, approver". */
export const roleWords = ({ role, isApprover }: Pick<Person, "role" | "isApprover">): string =>
  isApprover ? `${words[role]}, approver` : words[role];
