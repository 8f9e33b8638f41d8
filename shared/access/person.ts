import type { StaffRole } from "#shared/access/roles.ts";

/** Somebody who is signed in, as screens and use cases know them. */
export type Person = {
  readonly id: string;
  readonly userName: string;
  readonly fullName: string;
  readonly role: StaffRole;
  readonly isApprover: boolean;
};
